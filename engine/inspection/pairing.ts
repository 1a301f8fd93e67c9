/**
 * Which pieces of a lot go together, so that the sets are worth most together: kind by kind, the pieces of one kind are given to the sets
 * that the others form, exactly (`assignment`), until no kind gains any more. With two kinds that is the best there is; with more it is a place
 * where no kind can gain by itself.
 */
import { assignment } from './assignment.ts'

/** Sets by the place of their piece within each kind. */
export interface Paired {
  readonly sets: readonly (readonly number[])[]
  /** What they are worth together. */
  readonly worth: number
}

/** Kinds of pieces by how many there are, and what a set of one of each is worth. */
export interface Lot {
  readonly counts: readonly number[]
  readonly worthOf: (set: readonly number[]) => number
}

/** Rounds over all kinds: each gains or ends the search, and in practice three do. */
const ROUNDS_most = 20
/** Gains below this are rounding. */
const GAIN_least = 1e-9

/** As they come: the first of each kind with the first of every other. */
export function firstCome({ counts, worthOf }: Lot): Paired {
  const sets = Array.from({ length: Math.min(...counts) }, (_, set) => counts.map(() => set))
  return { sets, worth: sumOf(sets, worthOf) }
}

/** Paired as well as it is found; never worth less than first come. It yields how often a kind was given anew, after each. */
export function* pairing(lot: Lot): Generator<number, Paired> {
  let best = firstCome(lot)
  let given_count = 0
  for (let round = 0; round < ROUNDS_most; round++) {
    const before = best.worth
    for (const kind of lot.counts.keys()) {
      best = regiven(lot, best, kind)
      yield ++given_count
    }
    if (best.worth <= before + GAIN_least) break
  }
  return best
}

/** The same, in one go. */
export function paired(lot: Lot): Paired {
  const steps = pairing(lot)
  for (let step = steps.next(); ; step = steps.next()) if (step.done === true) return step.value
}

function regiven({ counts, worthOf }: Lot, had: Paired, kind: number): Paired {
  const worth = had.sets.map((set) => Array.from({ length: counts[kind] }, (_, piece) => worthOf(set.with(kind, piece))))
  const chosen = assignment(worth)
  const sets = had.sets.map((set, index) => set.with(kind, chosen[index]))
  const now = sumOf(sets, worthOf)
  return now > had.worth + GAIN_least ? { sets, worth: now } : had
}

const sumOf = (sets: Paired['sets'], worthOf: Lot['worthOf']): number => sets.reduce((sum, set) => sum + worthOf(set), 0)
