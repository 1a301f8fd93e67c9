/** A share that surfaces told, with the interval in which it lies. */
import { normalQuantile } from '../../numbers/distributions/normal.ts'
import { replicateOf, replicates_count } from '../spread/cloud.ts'
import { confidence_ratio, tHalf } from '../spread/share-interval.ts'
import type { ShareEstimate } from './share-estimate.ts'

/** A share, 0 to 1, with its interval at `confidence_ratio`. */
export interface SurfaceShare {
  readonly value: number
  readonly least: number
  readonly most: number
}

/** Chances of drawn sets, row by row. */
export interface Chances {
  readonly chances: Float64Array
  readonly row_sets: number
}

/** The share from its estimate. What was judged and what was drawn err apart from each other. */
export function shareFrom(
  { value, variance }: Pick<ShareEstimate, 'value' | 'variance'>,
  { chances, row_sets }: Chances,
): SurfaceShare {
  const judging = normalQuantile((1 + confidence_ratio) / 2) * Math.sqrt(variance)
  const drawing = drawnHalf({ chances, row_sets })
  const half = Math.max(Math.hypot(judging, drawing), 1 - clearShare(chances.length / row_sets).least)
  const middle = Math.min(1, Math.max(0, value))
  return { value: middle, least: Math.max(0, middle - half), most: Math.min(1, middle + half) }
}

/** Half of the interval that drawing leaves, whatever is judged. */
export function drawnHalf(chances: Chances): number {
  return tHalf(replicateMeans(chances))
}

/** None of so many rows falls short anywhere: the exact interval of a count (C. Clopper and E. Pearson 1934, from memory). */
export function clearShare(rows_count: number): SurfaceShare {
  return { value: 1, least: ((1 - confidence_ratio) / 2) ** (1 / rows_count), most: 1 }
}

function replicateMeans({ chances, row_sets }: Chances): readonly number[] {
  const sums = new Array<number>(replicates_count).fill(0)
  for (let set = 0; set < chances.length; set++) sums[replicateOf(Math.floor(set / row_sets))] += chances[set]
  return sums.map((sum) => (sum * replicates_count) / chances.length)
}
