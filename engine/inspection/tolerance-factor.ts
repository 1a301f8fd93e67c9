/**
 * Tolerance intervals of a normal process: x̄ ± k s holds a stated share of all pieces with a stated confidence.
 *
 * One-sided, exact: the confidence that x̄ + k s lies above the quantile z of the share is ∫ Φ(√n (k s − z)) f(s) ds over the deviation s, which
 * is the distribution of the noncentral t without its series. Two-sided, exact: for a mean that lies off by m the half width r holds the share where
 * Φ(m + r) − Φ(m − r) does; the confidence is the chance of s ≥ r/k, over m (as in W. Guenther's statement, from memory).
 * Both integrals are sums of evenly spaced ordinates of a smooth function that vanishes at both ends, where no rule is better.
 */
import { chiSquareCdf, chiSquareQuantile } from '../numbers/distributions/incomplete-gamma.ts'
import { normalCdf, normalDensity, normalQuantile } from '../numbers/distributions/normal.ts'
import { limits } from '../numbers/limits.ts'
import { rootBetween } from '../numbers/root.ts'

/** Share of the pieces within, and confidence in it; both between 0 and 1. */
export interface Content {
  readonly share: number
  readonly confidence: number
}

/** k of one side. @param count readings, at least two */
export function oneSidedFactor(count: number, { share, confidence }: Content): number {
  const z = normalQuantile(share)
  return factorWhere((k) => oneSidedConfidence(count, { k, z }), confidence)
}

/** k of both sides. @param count readings, at least two */
export function twoSidedFactor(count: number, { share, confidence }: Content): number {
  const halves = offsets(count).map(({ off, weight }) => ({ weight, half: halfWidth(off, share) }))
  const confidenceAt = (k: number): number => {
    const freedom = count - 1
    return halves.reduce((sum, { half, weight }) => sum + weight * (1 - chiSquareCdf(freedom, freedom * (half / k) ** 2)), 0)
  }
  return factorWhere(confidenceAt, confidence)
}

/** Factors beyond this come of two or three readings and say nothing. */
const FACTOR_MOST = 1000
/** Closed to this: tables give three places. */
const FACTOR_WIDTH = 1e-9

function factorWhere(confidenceAt: (k: number) => number, confidence: number): number {
  const off = (k: number): number => confidenceAt(k) - confidence
  const ends = { low: 0, high: FACTOR_MOST, atLow: -confidence, atHigh: off(FACTOR_MOST) }
  const root = rootBetween((k) => (k > 0 ? off(k) : -confidence), ends, FACTOR_WIDTH)
  if (root === undefined) throw new Error(`no tolerance factor below ${FACTOR_MOST} for confidence ${confidence}`)
  return root
}

/** Ordinates of each integral. */
const ORDINATES = 400
/** Share of the deviation's distribution that is left out at either end. */
const TAIL = 1e-12

function oneSidedConfidence(count: number, { k, z }: { readonly k: number; readonly z: number }): number {
  const freedom = count - 1
  const [low, high] = [TAIL, 1 - TAIL].map((p) => chiSquareQuantile(freedom, p))
  const step = (high - low) / ORDINATES
  let sum = 0
  for (let place = 0; place < ORDINATES; place++) {
    const [from, to] = [low + place * step, low + (place + 1) * step]
    const weight = chiSquareCdf(freedom, to) - chiSquareCdf(freedom, from)
    const deviation = Math.sqrt((from + to) / 2 / freedom)
    sum += weight * normalCdf(Math.sqrt(count) * (k * deviation - z))
  }
  return sum
}

/** Deviations within which a mean of readings is looked for. */
const DEVIATIONS = 8

/** Places at which the mean of n readings may lie, with their weights: normal, with deviation 1/√n. */
function offsets(count: number): readonly { readonly off: number; readonly weight: number }[] {
  const step = (2 * DEVIATIONS) / ORDINATES
  return Array.from({ length: ORDINATES + 1 }, (_, place) => {
    const u = -DEVIATIONS + place * step
    return { off: u / Math.sqrt(count), weight: normalDensity(u) * step }
  })
}

/** Half of the width about a mean that lies off by so much which holds the share. */
function halfWidth(off: number, share: number): number {
  const held = (half: number): number => normalCdf(off + half) - normalCdf(off - half) - share
  const high = Math.abs(off) + normalQuantile((1 + share) / 2) + 1
  const root = rootBetween(held, { low: 0, high, atLow: -share, atHigh: held(high) }, limits.quantileWidth * high)
  if (root === undefined) throw new Error(`no width holds ${share} about ${off}`)
  return root
}
