import type { HowFar, RunStep, Share, ShareAsked, Wanted } from './sets-run.ts'

/** Samples of one piece: some tenths of a second, and whole rounds of the replicates; of numbers as few as keep all hands busy to the end. */
const piece_samples = { sets: 32, wearers: 32, closed: 4096, numbers: 4, given: 4 } as const

/** Wanted samples in pieces that follow one another. */
export function* piecesOf(wanted: Wanted): Generator<ShareAsked, void> {
  const size = piece_samples[wanted.of]
  for (let from = 0; from < wanted.samples; from += size) {
    const to = Math.min(from + size, wanted.samples)
    yield { wanted: wantedIn(wanted, from, to), from, to }
  }
}

/** A piece of sets by their values is handed its own values only. */
function wantedIn(wanted: Wanted, from: number, to: number): Wanted {
  return wanted.of === 'numbers' || wanted.of === 'given' ? { ...wanted, values: wanted.values.slice(from, to) } : wanted
}

/** How far a run is, and what was reached. */
export interface RunProgress<Reached> extends HowFar {
  /** Absent before there is anything, and while the first of what is wanted is being made. */
  readonly reached?: () => Reached
}

/** How far a run is with shares of what it wants last, in any order. */
export function progressWith<Reached>({ reached, ...step }: RunStep<Reached>, shares: readonly Share[]): RunProgress<Reached> {
  const { wanted, each = 1, meanwhile: _, ...howFar } = step
  const done = shares.reduce((sum, { from, to }) => sum + each * (to - from), step.done)
  const following = followingOn(shares)
  if (!reached || (wanted && following.length === 0)) return { ...howFar, done }
  return { ...howFar, done, reached: () => reached(following) }
}

/** Shares in order from the first sample on, up to the first gap. */
function followingOn(shares: readonly Share[]): readonly Share[] {
  let next = 0
  return shares
    .toSorted((one, other) => one.from - other.from)
    .filter(({ from, to }) => {
      if (from !== next) return false
      next = to
      return true
    })
}
