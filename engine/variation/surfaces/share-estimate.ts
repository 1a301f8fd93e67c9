/**
 * The share of sets that meet something, from what surfaces say of all of them and what was judged of some in doubt:
 *
 *     share = mean of the chances + Σ over layers of (share of the layer · mean of (judged − chance))
 *
 * The second sum takes away what the surfaces get wrong, on the average whatever they are: a difference estimate in layers (W. G. Cochran,
 * Sampling Techniques, from memory). The sets were chosen before they were judged and by surfaces that had not seen them. Each round of
 * judging gives such an estimate; they are put together by what each was worth before anything was judged, so that no outcome speaks for itself.
 */
import type { Layer } from './doubtful-sets.ts'

/** An estimate of a share and its variance, as far as judging goes. */
export interface ShareEstimate {
  readonly value: number
  readonly variance: number
  /** As the chances alone allow, which knows nothing of what was judged. */
  readonly expected: number
}

/** One round. */
export interface RoundJudged {
  /** One a drawn set: the chance that the surfaces gave it. */
  readonly chances: Float64Array
  readonly layers: readonly Layer[]
  /** Whether a set that was judged meets it. */
  readonly isMet: (set: number) => boolean
}

/** The estimate of one round. A layer whose sets all came out as said may still err as its chances allow. */
export function estimateOf({ chances, layers, isMet }: RoundJudged): ShareEstimate {
  // A share is not told closer than half a set.
  const rounding = (0.5 / chances.length) ** 2
  const estimate = { value: meanOf(chances), variance: rounding, expected: rounding }
  for (const { share, chosen } of layers) {
    if (chosen.length === 0) continue
    const differences = chosen.map((set) => (isMet(set) ? 1 : 0) - chances[set])
    const mean = meanOf(differences)
    const seen = differences.reduce((sum, one) => sum + (one - mean) ** 2, 0) / Math.max(1, chosen.length - 1)
    const allowed = meanOf(chosen.map((set) => chances[set] * (1 - chances[set])))
    const weight = (share * share) / chosen.length
    estimate.value += share * mean
    estimate.variance += weight * Math.max(seen, allowed)
    estimate.expected += weight * allowed
  }
  return estimate
}

/** Puts estimates of the same share together. @param estimates at least one */
export function together(estimates: readonly ShareEstimate[]): Omit<ShareEstimate, 'expected'> {
  const worth = estimates.reduce((sum, { expected }) => sum + 1 / expected, 0)
  return {
    value: estimates.reduce((sum, { value, expected }) => sum + value / expected, 0) / worth,
    variance: estimates.reduce((sum, { variance, expected }) => sum + variance / expected ** 2, 0) / worth ** 2,
  }
}

/** Mean of a list. */
export function meanOf(values: ArrayLike<number>): number {
  let sum = 0
  for (let index = 0; index < values.length; index++) sum += values[index]
  return sum / values.length
}
