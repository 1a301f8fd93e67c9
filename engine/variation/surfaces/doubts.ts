/**
 * How sure surfaces are of each drawn set.
 *
 * A surface that misses by σ (root mean square) and says m for a set leaves the chance Φ(m/σ) that its number lies above nothing. Beyond four σ
 * the set is taken as the surface says. A set is in doubt as far as the least sure of its numbers is.
 */
import { normalCdf } from '../../numbers/distributions/normal.ts'

/** σ from nothing at which a surface is believed. */
export const sure_misses = 4

/** Parts of one σ in the table of chances: straight between two of them it errs by less than one in a million. */
const table_parts = 256

/** Φ from −sure_misses upwards. */
const table = Float64Array.from({ length: 2 * sure_misses * table_parts + 2 }, (_, place) =>
  normalCdf(place / table_parts - sure_misses),
)

/** What a surface says of every drawn set. */
export interface Said {
  /** Place in the list of requirements. */
  readonly requirement: number
  readonly isWhole: boolean
  readonly predicted: Float64Array
  /** σ. */
  readonly miss: number
}

/** Chances over the drawn sets. */
export interface Doubts {
  /** One a set: that it meets every requirement. */
  readonly all: Float64Array
  /** The same for each requirement that some surface speaks of. */
  readonly single: ReadonlyMap<number, Float64Array>
  /** One a set: distance of the least sure number from nothing, in σ. */
  readonly distances: Float64Array
}

/** @param said at least one */
export function doubtsOf(said: readonly Said[]): Doubts {
  const sets_count = said[0].predicted.length
  const distances = new Float64Array(sets_count).fill(Number.POSITIVE_INFINITY)
  const single = new Map<number, Float64Array>()
  for (const one of said) {
    const own = single.get(one.requirement) ?? new Float64Array(sets_count).fill(1)
    single.set(one.requirement, own)
    addDoubts(one, own, distances)
  }
  const [first, ...others] = single.values()
  // Most often one requirement is in doubt, and all of them hang on it.
  const all = others.length === 0 ? first : first.slice()
  for (const own of others) for (let set = 0; set < sets_count; set++) all[set] *= own[set]
  return { all, single, distances }
}

function addDoubts({ predicted, miss, isWhole }: Said, chances: Float64Array, distances: Float64Array): void {
  for (let set = 0; set < predicted.length; set++) {
    const far = predicted[set] / miss
    if (far < sure_misses) chances[set] *= far <= -sure_misses ? 0 : chanceAt(far)
    // Below nothing a number that is not the whole of its requirement says nothing.
    const distance = isWhole || far > 0 ? Math.abs(far) : 0
    if (distance < distances[set]) distances[set] = distance
  }
}

/** @param far between −sure_misses and sure_misses */
function chanceAt(far: number): number {
  const place = (far + sure_misses) * table_parts
  const below = Math.floor(place)
  return table[below] + (place - below) * (table[below + 1] - table[below])
}
