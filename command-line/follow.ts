import type { HowFar, progressTeller } from './spread-progress.ts'

/** How a run is followed. */
export interface Following {
  readonly tell: ReturnType<typeof progressTeller>['tell']
  readonly isStopped: () => boolean
}

/** Goes through the pieces of a run; undefined when it was stopped on the way. */
export async function follow<Result>(
  pieces: Generator<HowFar, Result>,
  { tell, isStopped }: Following,
): Promise<Result | undefined> {
  for (let piece = pieces.next(); ; piece = pieces.next()) {
    if (piece.done === true) return piece.value
    tell(piece.value)
    await new Promise((resolve) => setImmediate(resolve))
    if (isStopped()) return undefined
  }
}
