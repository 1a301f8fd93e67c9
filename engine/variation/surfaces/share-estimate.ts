/**
 * The share of sets that meet something, from what surfaces say of all of them and what was judged of some in doubt:
 *
 *     share = mean of the chances + Σ over layers of (share of the layer · mean of (judged − chance))
 *
 * The second sum takes away what the surfaces get wrong, on the average whatever they are: a difference estimate in layers (W. G. Cochran,
 * Sampling Techniques, from memory). The sets were chosen before they were judged and by surfaces that had not seen them. Each round of
 * judging gives such an estimate; they are put together by what each was worth before anything was judged, so that no outcome speaks for itself.
 *
 * A judged set with the chance p differs from it by a square of p (1 − p) on the average, if chances are what they say. Where those that were
 * judged differ by more, all together, the variance is larger in that proportion.
 */
import type { Layer } from './doubtful-sets.ts'

/** An estimate of a share, as far as judging goes. */
export interface ShareEstimate {
  readonly value: number
  /** As the chances allow. */
  readonly variance: number
  /** Sums over the judged sets: squares of how they differ, and what the chances allow of that. */
  readonly differing: number
  readonly allowed: number
}

/** One round. */
export interface RoundJudged {
  /** One a drawn set: the chance that the surfaces gave it. */
  readonly chances: Float64Array
  readonly layers: readonly Layer[]
  /** Whether a set that was judged meets it. */
  readonly isMet: (set: number) => boolean
}

/** The estimate of one round. */
export function estimateOf({ chances, layers, isMet }: RoundJudged): ShareEstimate {
  const found = { ...asDrawn(chances), variance: claimedVariance(chances, layers) }
  for (const { share, chosen } of layers) {
    if (chosen.length === 0) continue
    const differences = chosen.map((set) => (isMet(set) ? 1 : 0) - chances[set])
    found.value += share * meanOf(differences)
    found.differing += differences.reduce((sum, one) => sum + one * one, 0)
    found.allowed += allowedIn(chances, chosen)
  }
  return found
}

/** What a round is worth before it is judged: the variance that its chances claim for it. */
export function claimedVariance(chances: Float64Array, layers: readonly Layer[]): number {
  return layers
    .filter(({ chosen }) => chosen.length > 0)
    .reduce(
      (sum, { share, chosen }) => sum + (share / chosen.length) ** 2 * allowedIn(chances, chosen),
      asDrawn(chances).variance,
    )
}

function allowedIn(chances: Float64Array, sets: readonly number[]): number {
  return sets.reduce((sum, set) => sum + chances[set] * (1 - chances[set]), 0)
}

/**
 * Rounds in their order, none worth more than what later surfaces claim: a surface through more sets knows better how far an earlier one could be
 * trusted.
 *
 * @param claimed by the surfaces as they stand, for a round that is not judged
 */
export function noBetterThanLater(estimates: readonly ShareEstimate[], claimed: number): readonly ShareEstimate[] {
  let least = claimed
  return estimates
    .toReversed()
    .map((estimate) => {
      least = Math.max(least, estimate.variance)
      return { ...estimate, variance: least }
    })
    .toReversed()
}

/** The estimate before anything is judged: sets in doubt may all be as far from their chances as one of them, and on the same side. */
export function unjudged(chances: Float64Array): ShareEstimate {
  const deviation = meanOf(chances.map((chance) => Math.sqrt(chance * (1 - chance))))
  return { ...asDrawn(chances), variance: deviation ** 2 + asDrawn(chances).variance }
}

function asDrawn(chances: Float64Array): ShareEstimate {
  // A share is not told closer than half a set.
  return { value: meanOf(chances), variance: (0.5 / chances.length) ** 2, differing: 0, allowed: 0 }
}

/** Puts estimates of the same share together. @param estimates at least one */
export function together(estimates: readonly ShareEstimate[]): Pick<ShareEstimate, 'value' | 'variance'> {
  const worth = estimates.reduce((sum, { variance }) => sum + 1 / variance, 0)
  const [differing, allowed] = [sumOf(estimates, 'differing'), sumOf(estimates, 'allowed')]
  const excess = differing > allowed ? differing / allowed : 1
  return { value: estimates.reduce((sum, { value, variance }) => sum + value / variance, 0) / worth, variance: excess / worth }
}

function sumOf(estimates: readonly ShareEstimate[], of: 'differing' | 'allowed'): number {
  return estimates.reduce((sum, estimate) => sum + estimate[of], 0)
}

/** Mean of a list. */
export function meanOf(values: ArrayLike<number>): number {
  let sum = 0
  for (let index = 0; index < values.length; index++) sum += values[index]
  return sum / values.length
}
