/**
 * What tests on the bench show of a life or of a load, with few of them and fewer failures: the success run at what is asked, the same with a
 * stated shape of the law of lives, and the likeliest law where enough failed.
 */
import { reliabilityShown } from './success-run.ts'
import { outlastShown, type WeibullFit, weibullFit } from './weibull.ts'

/** One piece that was run, or loaded, and whether it failed there. */
export interface Run {
  readonly serial: string
  /** How long it ran (closings), or how much it was loaded (N). */
  readonly reached: number
  readonly failed: boolean
}

/** What is asked of runs. */
export interface LifeAsked {
  readonly life: number
  /** Of the law of lives, stated: 1 for failures by chance, 2 and more for wear. */
  readonly shape: number
  readonly confidence: number
}

/** What passed and failed at what is asked, and the least share of pieces that it shows. */
export interface ShownShare {
  readonly passed: number
  readonly failed: number
  /** Runs that ended before and say nothing at it. */
  readonly silent: number
  /** Absent where no run says anything. */
  readonly share?: number
}

/** What runs show at a life. */
export interface LifeStudy {
  readonly asked: LifeAsked
  readonly runs: readonly Run[]
  readonly shown: ShownShare
  /** With the stated shape every run counts by its length; only where nothing failed. */
  readonly byShape?: number
  /** The likeliest law, and the share that outlasts the life by it; only where two failed at different lives. It claims no confidence. */
  readonly likeliest?: WeibullFit & { readonly outlast: number }
}

/** Studies runs. @param runs any number, `reached` above 0 */
export function lifeStudy(runs: readonly Run[], asked: LifeAsked): LifeStudy {
  const { life, shape, confidence } = asked
  // Whoever outran the life passed it, also where it failed later.
  const passed = runs.filter(({ reached, failed }) => (failed ? reached > life : reached >= life)).length
  const failed = runs.filter((run) => run.failed && run.reached <= life).length
  const failures = runs.filter((run) => run.failed).map(({ reached }) => reached)
  const running = runs.filter((run) => !run.failed).map(({ reached }) => reached)
  const fit = weibullFit(failures, running)
  return {
    asked,
    runs,
    shown: shownBy({ passed, failed, silent: runs.length - passed - failed }, confidence),
    ...(failures.length === 0 && runs.length > 0 && { byShape: outlastShown({ ran: running, shape, life }, confidence) }),
    ...(fit && { likeliest: { ...fit, outlast: Math.exp(-((life / fit.scale) ** fit.shape)) } }),
  }
}

/** What loads show at one load: who held more held this; who failed at more may have held this. */
export function proofStudy(
  runs: readonly Run[],
  { load, confidence }: { readonly load: number; readonly confidence: number },
): ShownShare {
  const passed = runs.filter((run) => !run.failed && run.reached >= load).length
  const failed = runs.filter((run) => run.failed && run.reached <= load).length
  return shownBy({ passed, failed, silent: runs.length - passed - failed }, confidence)
}

function shownBy(counted: Omit<ShownShare, 'share'>, confidence: number): ShownShare {
  const { passed, failed } = counted
  if (passed + failed === 0) return counted
  return { ...counted, share: reliabilityShown({ tried: passed + failed, failed }, confidence) }
}
