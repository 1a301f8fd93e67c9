/** The middle of the cloud and one deviation of each source either way: what root sums, corners and the search for failures begin from. */
import { judgedGiven, type SetsRun } from '../shares/sets-run.ts'
import type { JudgedSet, SpreadProblem } from './spread-problem.ts'

/** Judged sets around the middle. */
export interface Steps {
  /** Every source at its median. */
  readonly middle: JudgedSet
  /** One a source: that source one deviation of its normal number up, all others in the middle. */
  readonly up: readonly JudgedSet[]
  readonly down: readonly JudgedSet[]
}

/** Has the middle and the steps of every source judged. */
export function* stepsOf({ sources, valuesAt }: SpreadProblem): SetsRun<Steps, never> {
  const middle = new Float64Array(sources.length)
  const stepped = sources.flatMap((_, source) => [1, -1].map((step) => middle.with(source, step)))
  const [first, ...sides] = yield* judgedGiven([middle, ...stepped].map(valuesAt), { doing: 'steps' })
  return {
    middle: first,
    up: sides.filter((_, side) => side % 2 === 0),
    down: sides.filter((_, side) => side % 2 === 1),
  }
}

/** Change of a figure with one deviation of each source, by both sides; NaN where a side has no value. */
export function effectsIn({ up, down }: Steps, figure: number): Float64Array {
  return Float64Array.from(up, (above, source) => (above.values[figure] - down[source].values[figure]) / 2)
}

/** What the curve of each source adds at one deviation: half of its second derivative. */
export function bendsIn({ middle, up, down }: Steps, figure: number): Float64Array {
  return Float64Array.from(
    up,
    (above, source) => (above.values[figure] + down[source].values[figure]) / 2 - middle.values[figure],
  )
}

/** Length of a vector. */
export function lengthOf(vector: ArrayLike<number>): number {
  let square = 0
  for (let index = 0; index < vector.length; index++) square += vector[index] * vector[index]
  return Math.sqrt(square)
}
