/** Where the closed finger stands between jam and slip, set by set. */
import { columnOf, type Samples } from './samples.ts'
import type { CountedShare } from './share-interval.ts'
import type { SpreadProblem, WatchedWindow } from './spread-problem.ts'
import { seenIn } from './yields.ts'

/** Shares of sets on either side of the window. */
export interface WindowSpread {
  /** Places in the list of figures. */
  readonly watched: Pick<WatchedWindow, 'margin' | 'jam' | 'slip' | 'loadCase'>
  /** Closed nearer to dead centre than the angle from which it jams. */
  readonly jammed: CountedShare
  /** Closed farther out than the angle at which the kept load slips. */
  readonly slipped: CountedShare
}

/** @returns undefined without a window */
export function windowSpread({ window, figures }: SpreadProblem, samples: Samples): WindowSpread | undefined {
  if (!window) return undefined
  const { margin, jam, slip, loadCase } = window
  const [margins, jams, slips] = [margin, jam, slip].map((figure) => columnOf(samples, figure, figures.length))
  const counted = { from: samples.from, samples_count: samples.failures.length }
  return {
    watched: { margin, jam, slip, loadCase },
    jammed: seenIn(counted, (sample) => margins[sample] <= jams[sample]),
    slipped: seenIn(counted, (sample) => margins[sample] >= slips[sample]),
  }
}
