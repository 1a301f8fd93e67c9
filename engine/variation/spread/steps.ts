/** The middle of the cloud and one deviation of each source either way: what root sums, corners and the search for failures begin from. */
import type { JudgedSet, SpreadProblem } from './spread-problem.ts'

/** Judged sets around the middle. */
export interface Steps {
  /** Every source at its median. */
  readonly middle: JudgedSet
  /** One a source: that source one deviation of its normal number up, all others in the middle. */
  readonly up: readonly JudgedSet[]
  readonly down: readonly JudgedSet[]
}

/** Works through the sources; yields how many are done. */
export function* stepsOf(problem: SpreadProblem): Generator<number, Steps> {
  const normals = new Float64Array(problem.sources.length)
  const judgedAt = (source: number, step: number): JudgedSet => {
    normals[source] = step
    const judged = problem.judge(problem.valuesAt(normals))
    normals[source] = 0
    return judged
  }
  const middle = problem.judge(problem.valuesAt(normals))
  const up: JudgedSet[] = []
  const down: JudgedSet[] = []
  for (let source = 0; source < problem.sources.length; source++) {
    up.push(judgedAt(source, 1))
    down.push(judgedAt(source, -1))
    yield source + 1
  }
  return { middle, up, down }
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
