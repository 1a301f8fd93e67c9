/** The life of a finger between the likely and the most that its pairs may lose: wear is known to an order of magnitude. */
import type { Design } from '../../design/design.ts'
import type { Problem } from '../../design/problem.ts'
import type { Verdict } from '../../figures/evaluation.ts'
import type { Wear, WearProgress, Worn } from './wear.ts'
import { wearOf } from './wear-of.ts'

/** A requirement over the stated life. */
export interface LifeFinding {
  readonly requirement: string
  readonly figure: string
  /** Met: at the most wear as well. Short: at the likely wear already, or as new. Undecided between the two, and where it is so as new. */
  readonly verdict: Verdict
  /** Closings after which it is no longer met, at the most and at the likely wear; absent where it holds as long as was looked. */
  readonly untilMost?: number
  readonly untilLikely?: number
  /** What it becomes at the most wear. */
  readonly becomes?: Verdict
}

/** Both ends of what wear may be. */
export interface Life {
  readonly likely: Wear
  readonly most: Wear
  /** One a requirement, the first to fall short at the most wear first. */
  readonly findings: readonly LifeFinding[]
}

/** The life, or what the document would have to state first. */
export type Lived =
  | { readonly life: Life; readonly missing?: never }
  | { readonly life?: never; readonly missing: readonly Problem[] }

/** Works through both lives, the worse one first; the caller can show how far it is, stop, or go on. */
export function* lifeOf(design: Design): Generator<WearProgress, Lived> {
  const most: Worn = yield* wearOf(design, 'most')
  if (!most.wear) return { missing: most.missing }
  const likely: Worn = yield* wearOf(design, 'likely')
  if (!likely.wear) return { missing: likely.missing }
  const pair = { most: most.wear, likely: likely.wear }
  return { life: { ...pair, findings: lifeFindings(pair) } }
}

function lifeFindings({ most, likely }: Omit<Life, 'findings'>): readonly LifeFinding[] {
  const last = Number.POSITIVE_INFINITY
  const found = most.findings.map(({ requirement, figure, asNew, until, becomes }, index): LifeFinding => {
    const untilLikely = likely.findings[index].until
    const verdict = asNew === 'met' ? overLife(most, { until, untilLikely, likely }) : asNew
    return {
      requirement,
      figure,
      verdict,
      ...(until !== undefined && { untilMost: until }),
      ...(untilLikely !== undefined && { untilLikely }),
      ...(becomes && { becomes }),
    }
  })
  return found.sort((one, other) => (one.untilMost ?? last) - (other.untilMost ?? last))
}

interface Ends {
  readonly until: number | undefined
  readonly untilLikely: number | undefined
  readonly likely: Wear
}

/** A run that ended before the stated life (the finger no longer lets go) decides nothing beyond its end. */
function overLife(most: Wear, { until, untilLikely, likely }: Ends): Verdict {
  const life = most.life_closings
  if ((untilLikely ?? Number.POSITIVE_INFINITY) < life) return 'short'
  const holdsAtMost = (until ?? Number.POSITIVE_INFINITY) >= life && most.end_closings >= life
  return holdsAtMost && likely.end_closings >= life ? 'met' : 'undecided'
}
