import { piecesOf, progressWith, type RunProgress } from './pieces.ts'
import type { SetsRun, Share, ShareAsked } from './sets-run.ts'

/** A run in one thread, with every share made on the spot; says how far it is after each piece, and may be left there. */
export function* byOne<Result, Reached>(
  run: SetsRun<Result, Reached>,
  make: (asked: ShareAsked) => Share,
): Generator<RunProgress<Reached>, Result> {
  let step = run.next([])
  while (step.done !== true) {
    const { value } = step
    const shares: Share[] = []
    if (!value.wanted) yield progressWith(value, shares)
    else
      for (const piece of piecesOf(value.wanted)) {
        shares.push(make(piece))
        yield progressWith(value, shares)
      }
    step = run.next(shares)
  }
  return step.value
}
