/**
 * The beta distribution, from which Student's t, F and the exact interval of a share follow.
 *
 * Its cumulative is the regularised incomplete beta function, by the continued fraction of its even and odd parts (Abramowitz & Stegun,
 * 26.5.8, from memory), evaluated forwards by Lentz's rule, on the side where that converges quickly.
 */
import { limits } from '../limits.ts'
import { rootBetween } from '../root.ts'
import { logGamma } from './log-gamma.ts'

/** Both parameters of a beta distribution, positive. */
export interface BetaShape {
  readonly a: number
  readonly b: number
}

/** Share below x. @param x from 0 to 1 */
export function betaCdf({ a, b }: BetaShape, x: number): number {
  if (x <= 0) return 0
  if (x >= 1) return 1
  const front = Math.exp(logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log1p(-x))
  if (x < (a + 1) / (a + b + 2)) return (front * betaFraction({ a, b }, x)) / a
  return 1 - (front * betaFraction({ a: b, b: a }, 1 - x)) / b
}

/** The x below which a share p lies, to about 1e-14 of the range. @param p from 0 to 1 */
export function betaQuantile(shape: BetaShape, p: number): number {
  if (p <= 0) return 0
  if (p >= 1) return 1
  const root = rootBetween((x) => betaCdf(shape, x) - p, { low: 0, high: 1, atLow: -p, atHigh: 1 - p }, limits.quantileWidth)
  if (root === undefined) throw new Error(`betaQuantile: no root for a = ${shape.a}, b = ${shape.b}, p = ${p}`)
  return root
}

/** No denominator may be nothing: this is far below any that counts. */
const tiny = 1e-300

/** 1/(1 + d₁/(1 + d₂/(1 + …))). */
function betaFraction({ a, b }: BetaShape, x: number): number {
  let above = 1
  let below = 1 / kept(1 - ((a + b) * x) / (a + 1))
  let product = below
  for (let m = 1; m < limits.distributionTerms; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m))
    below = 1 / kept(1 + even * below)
    above = kept(1 + even / above)
    product *= below * above
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1))
    below = 1 / kept(1 + odd * below)
    above = kept(1 + odd / above)
    const factor = below * above
    product *= factor
    if (Math.abs(factor - 1) < Number.EPSILON) break
  }
  return product
}

function kept(value: number): number {
  return Math.abs(value) < tiny ? tiny : value
}
