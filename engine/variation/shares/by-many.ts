import { piecesOf, progressWith, type RunProgress } from './pieces.ts'
import type { RunStep, SetsRun, Share, ShareAsked } from './sets-run.ts'

/** Those that make shares: workers of a process or of a page, or one that stands in for them. */
export interface Hands {
  readonly count: number
  /** @param hand which of them, from 0; it is asked for one share at a time */
  readonly make: (hand: number, asked: ShareAsked) => Promise<Share>
}

/** How a run is followed. */
export interface Following<Reached> {
  readonly hands: Hands
  /** Called after each piece; the run goes on when it is done. */
  readonly tell: (progress: RunProgress<Reached>) => void | Promise<void>
  /** Whether the reader wants it to end. Pieces that are being made are waited for. */
  readonly isStopped: () => boolean
}

/**
 * A run whose shares are made by many hands: the numbers are those of one.
 *
 * @returns what it has reached where it was stopped; the plan before the first samples is always finished
 */
export async function byMany<Reached>(run: SetsRun<Reached>, following: Following<Reached>): Promise<Reached> {
  let step = run.next([])
  while (step.done !== true) {
    const { value } = step
    if (!value.wanted) await following.tell(progressWith(value, []))
    const shares = await sharedOut(value, following)
    if (following.isStopped() && value.reached) return value.reached(shares)
    step = run.next(shares)
  }
  return step.value
}

/** Every hand asks for its next piece before it tells of the last: it does not wait for what is told. @returns shares without a gap */
async function sharedOut<Reached>(
  step: RunStep<Reached>,
  { hands, tell, isStopped }: Following<Reached>,
): Promise<readonly Share[]> {
  if (!step.wanted) return []
  const pieces = piecesOf(step.wanted)
  const shares: Share[] = []
  const work = async (hand: number): Promise<void> => {
    const asked = (): Promise<Share> | undefined => {
      const piece = pieces.next()
      // What has reached nothing yet cannot be left half-way.
      const isLeft = isStopped() && step.reached !== undefined
      return piece.done === true || isLeft ? undefined : hands.make(hand, piece.value)
    }
    for (let making = asked(); making; ) {
      shares.push(await making)
      making = asked()
      await tell(progressWith(step, shares))
    }
  }
  const works = Array.from({ length: hands.count }, (_, hand) => work(hand))
  step.meanwhile?.()
  await Promise.all(works)
  return shares.toSorted((one, other) => one.from - other.from)
}
