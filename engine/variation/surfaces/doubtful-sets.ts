/** Which sets are judged next: those in doubt, in layers by how much, more of them where that tells more. */
import { type Doubts, sure_misses } from './doubts.ts'

/** Sets in doubt of one layer that nobody has judged. */
export interface Layer {
  /** Share of the drawn sets that it stands for. */
  readonly share: number
  /** Those that are judged, by their numbers. */
  readonly chosen: readonly number[]
}

/** Where layers end, in σ from nothing: within the first a surface hardly knows, in the last it seldom errs. */
const ends = [1, 2, sure_misses] as const

/** Judged in a layer at the least, so that its spread can be told. */
const layer_sets_least = 3

/**
 * Chooses sets by the best division of a sample over layers, in proportion to share times deviation (J. Neyman 1934, from memory). Those of a
 * layer are spread evenly over it, in the order in which they were drawn.
 */
export function doubtfulSets(
  { all, distances }: Doubts,
  judged: Pick<ReadonlyMap<number, unknown>, 'has'>,
  count: number,
): readonly Layer[] {
  const layers = ends.map((): number[] => [])
  for (let set = 0; set < distances.length; set++) {
    if (distances[set] >= sure_misses || judged.has(set)) continue
    layers[ends.findIndex((end) => distances[set] < end)].push(set)
  }
  const weights = layers.map((sets) => Math.sqrt(sets.length * sets.reduce((sum, set) => sum + all[set] * (1 - all[set]), 0)))
  const whole = weights.reduce((sum, weight) => sum + weight, 0)
  return layers.map((sets, layer) => {
    const wanted = whole > 0 ? Math.round((count * weights[layer]) / whole) : 0
    return { share: sets.length / distances.length, chosen: evenly(sets, Math.max(layer_sets_least, wanted)) }
  })
}

function evenly(sets: readonly number[], count: number): readonly number[] {
  if (sets.length <= count) return sets
  return Array.from({ length: count }, (_, index) => sets[Math.floor(((index + 0.5) * sets.length) / count)])
}
