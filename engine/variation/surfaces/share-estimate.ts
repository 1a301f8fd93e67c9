/**
 * The share of sets that meet something, from what surfaces say of all of them and what was judged of some in doubt:
 *
 *     share = mean of the chances + Σ over layers of (share of the layer · mean of (judged − chance))
 *
 * The second sum takes away what the surfaces get wrong, on the average whatever they are: a difference estimate in layers (W. G. Cochran,
 * Sampling Techniques, from memory). The sets were chosen before they were judged and by surfaces that had not seen them. Each round of
 * judging gives such an estimate; they are put together by what each is worth, one over its variance.
 */
import type { Layer } from './doubtful-sets.ts'

/** An estimate of a share and its variance, as far as judging goes. */
export interface ShareEstimate {
  readonly value: number
  readonly variance: number
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
  let value = meanOf(chances)
  // A share is not told closer than half a set.
  let variance = (0.5 / chances.length) ** 2
  for (const { share, chosen } of layers) {
    if (chosen.length === 0) continue
    const differences = chosen.map((set) => (isMet(set) ? 1 : 0) - chances[set])
    const mean = differences.reduce((sum, one) => sum + one, 0) / chosen.length
    const seen = differences.reduce((sum, one) => sum + (one - mean) ** 2, 0) / Math.max(1, chosen.length - 1)
    const allowed = chosen.reduce((sum, set) => sum + chances[set] * (1 - chances[set]), 0) / chosen.length
    value += share * mean
    variance += (share * share * Math.max(seen, allowed)) / chosen.length
  }
  return { value, variance }
}

/** Puts estimates of the same share together. @param estimates at least one */
export function together(estimates: readonly ShareEstimate[]): ShareEstimate {
  const worth = estimates.reduce((sum, { variance }) => sum + 1 / variance, 0)
  return { value: estimates.reduce((sum, { value, variance }) => sum + value / variance, 0) / worth, variance: 1 / worth }
}

/** Mean of a list. */
export function meanOf(values: ArrayLike<number>): number {
  let sum = 0
  for (let index = 0; index < values.length; index++) sum += values[index]
  return sum / values.length
}
