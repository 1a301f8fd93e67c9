/**
 * The gamma distribution, from which chi-square follows.
 *
 * Its cumulative is the regularised incomplete gamma function: the power series below a + 1, the continued fraction above it (Abramowitz &
 * Stegun, 6.5.29 and 6.5.31, from memory), the latter evaluated forwards by Lentz's rule.
 */
import { limits } from '../limits.ts'
import { rootBetween } from '../root.ts'
import { logGamma } from './log-gamma.ts'

/** Share below x of the gamma distribution with shape a and scale 1. @param a positive */
export function gammaCdf(a: number, x: number): number {
  if (x <= 0) return 0
  const front = Math.exp(a * Math.log(x) - x - logGamma(a))
  return x < a + 1 ? front * gammaSeries(a, x) : 1 - front * gammaFraction(a, x)
}

/** Share below x of chi-square. @param freedom degrees of freedom, positive */
export function chiSquareCdf(freedom: number, x: number): number {
  return gammaCdf(freedom / 2, x / 2)
}

/** The x below which a share p of chi-square lies. @param p between 0 and 1, both left out */
export function chiSquareQuantile(freedom: number, p: number): number {
  const below = (x: number): number => chiSquareCdf(freedom, x) - p
  let high = freedom + 1
  for (let doubling = 0; below(high) < 0 && doubling < limits.quantileDoublings; doubling++) high *= 2
  const root = rootBetween(below, { low: 0, high, atLow: -p, atHigh: below(high) }, limits.quantileWidth * high)
  if (root === undefined) throw new Error(`chiSquareQuantile: no root for ${freedom} degrees of freedom, p = ${p}`)
  return root
}

/** 1/a + x/(a(a+1)) + x²/(a(a+1)(a+2)) + … */
function gammaSeries(a: number, x: number): number {
  let term = 1 / a
  let sum = term
  for (let n = 1; n < limits.distributionTerms && term > sum * Number.EPSILON; n++) {
    term *= x / (a + n)
    sum += term
  }
  return sum
}

/** No denominator may be nothing: this is far below any that counts. */
const tiny = 1e-300

/** 1/(x + 1 − a − 1(1 − a)/(x + 3 − a − …)). */
function gammaFraction(a: number, x: number): number {
  let below = x + 1 - a
  let above = 1 / tiny
  let product = 1 / below
  let factor = 1 / below
  for (let n = 1; n < limits.distributionTerms; n++) {
    const over = -n * (n - a)
    below += 2
    factor = 1 / kept(over * factor + below)
    above = kept(below + over / above)
    const step = factor * above
    product *= step
    if (Math.abs(step - 1) < Number.EPSILON) break
  }
  return product
}

function kept(value: number): number {
  return Math.abs(value) < tiny ? tiny : value
}
