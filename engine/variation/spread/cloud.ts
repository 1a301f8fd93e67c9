/**
 * The cloud of samples: standard normal numbers from scrambled Sobol' points, in replicates that tell the error, turned so that its first
 * coordinates point where the sets fail.
 *
 *     sample n  ─▶  replicate n mod 16, point ⌊n/16⌋  ─▶  u in (0,1)^d  ─▶  Φ⁻¹(u)  ─▶  Q Φ⁻¹(u)
 *
 * A turn Q keeps the normal measure, so that every sample counts once, turned or not. Samples of all replicates alternate, so that a run may
 * be stopped anywhere. A sample depends on seed and number alone: shares of a run can be made in any order and place.
 */
import { normalQuantile } from '../../numbers/distributions/normal.ts'
import { scrambledSobol } from '../../numbers/sobol.ts'
import { turnTowards } from './turn.ts'

/** Independent scramblings of one run: enough for an interval by Student's t with 15 degrees of freedom. */
export const replicates_count = 16

/** Which cloud: the same one gives the same samples. */
export interface CloudAsked {
  readonly dimensions: number
  readonly seed: number
  /** Directions that the first coordinates are turned to, in the space of the normal numbers; left out: the cloud is not turned. */
  readonly directions?: readonly ArrayLike<number>[]
}

/** Any sample of a cloud. */
export interface Cloud {
  /** Numbers of a sample into `out`, one a dimension: standard normal ones, if nothing else is said. */
  readonly fill: (sample: number, out: Float64Array) => void
}

/** Points of a cloud before they are normal numbers: evenly spread shares between 0 and 1, both left out. */
export function sharesOf({ dimensions, seed }: Omit<CloudAsked, 'directions'>): Cloud {
  const sequences = Array.from({ length: replicates_count }, (_, replicate) => scrambledSobol({ dimensions, seed, replicate }))
  return { fill: (sample, out) => sequences[replicateOf(sample)].fill(Math.floor(sample / replicates_count), out) }
}

/** A cloud of samples. */
export function cloudOf({ dimensions, seed, directions = [] }: CloudAsked): Cloud {
  const shares = sharesOf({ dimensions, seed })
  const turn = turnTowards(directions)
  const fill = (sample: number, out: Float64Array): void => {
    shares.fill(sample, out)
    for (let dimension = 0; dimension < dimensions; dimension++) out[dimension] = normalQuantile(out[dimension])
    turn.apply(out)
  }
  return { fill }
}

/** The replicate that a sample belongs to. */
export function replicateOf(sample: number): number {
  return sample % replicates_count
}
