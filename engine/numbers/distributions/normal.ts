/**
 * The standard normal distribution.
 *
 * Φ: the series φ(x) (x + x³/3 + x⁵/(3·5) + …) near the middle, the continued fraction of the tail beyond (both classical; G. Marsaglia,
 * Journal of Statistical Software 11(4), 2004, compares them, from memory). Φ⁻¹: rational approximations in three ranges (M. J. Wichura,
 * algorithm AS 241, Applied Statistics 37, 1988, from memory; the tests hold them against other published digits).
 */
import { limits } from '../limits.ts'

const inverseRootOfTwoPi = 1 / Math.sqrt(2 * Math.PI)

/** Beyond this many deviations the continued fraction needs fewer terms than the series, and keeps the tail's relative accuracy. */
const tailBegins = 2.5

/** Density at x. */
export function normalDensity(x: number): number {
  return inverseRootOfTwoPi * Math.exp(-0.5 * x * x)
}

/** Share below x, with full relative accuracy in the lower tail. */
export function normalCdf(x: number): number {
  if (x > tailBegins) return 1 - upperTail(x)
  return x < -tailBegins ? upperTail(-x) : 0.5 + normalDensity(x) * oddSeries(x)
}

function oddSeries(x: number): number {
  let sum = x
  let term = x
  for (let odd = 3; odd < limits.distributionTerms; odd += 2) {
    term *= (x * x) / odd
    if (sum + term === sum) break
    sum += term
  }
  return sum
}

/** φ(x) / (x + 1/(x + 2/(x + 3/(x + …)))), taken from its far end. */
function upperTail(x: number): number {
  const depth = Math.ceil(limits.normalTailDepth / (x * x)) + limits.normalTailLeast
  let below = x
  for (let term = depth; term > 0; term--) below = x + term / below
  return normalDensity(x) / below
}

/** The three ranges, each a ratio of two polynomials. They are written out, because a loop over lists takes several times as long and samples are made of this. */
function middle(x: number): number {
  const above =
    ((((((2509.0809287301227 * x + 33430.57558358813) * x + 67265.7709270087) * x + 45921.95393154987) * x + 13731.69376550946) *
      x +
      1971.5909503065513) *
      x +
      133.14166789178438) *
      x +
    3.3871328727963665
  const below =
    ((((((5226.495278852546 * x + 28729.085735721943) * x + 39307.89580009271) * x + 21213.794301586597) * x +
      5394.196021424751) *
      x +
      687.1870074920579) *
      x +
      42.31333070160091) *
      x +
    1
  return above / below
}

function near(x: number): number {
  const above =
    ((((((0.0007745450142783414 * x + 0.022723844989269184) * x + 0.2417807251774506) * x + 1.2704582524523684) * x +
      3.6478483247632045) *
      x +
      5.769497221460691) *
      x +
      4.630337846156546) *
      x +
    1.4234371107496835
  const below =
    ((((((1.0507500716444169e-9 * x + 0.0005475938084995345) * x + 0.015198666563616457) * x + 0.14810397642748008) * x +
      0.6897673349851) *
      x +
      1.6763848301838038) *
      x +
      2.053191626637759) *
      x +
    1
  return above / below
}

function far(x: number): number {
  const above =
    ((((((2.0103343992922881e-7 * x + 2.7115555687434876e-5) * x + 0.0012426609473880784) * x + 0.026532189526576124) * x +
      0.29656057182850487) *
      x +
      1.7848265399172913) *
      x +
      5.463784911164114) *
      x +
    6.657904643501103
  const below =
    ((((((2.0442631033899397e-15 * x + 1.421511758316446e-7) * x + 1.8463183175100548e-5) * x + 0.0007868691311456133) * x +
      0.014875361290850615) *
      x +
      0.1369298809227358) *
      x +
      0.599832206555888) *
      x +
    1
  return above / below
}

/** Ends of the middle range in |p − ½|, and of the near range in √(−ln p). */
const middleEnds = 0.425
const nearEnds = 5

/** The x below which a share p lies. @param p between 0 and 1, both left out */
export function normalQuantile(p: number): number {
  const q = p - 0.5
  if (Math.abs(q) <= middleEnds) return q * middle(middleEnds ** 2 - q * q)
  const r = Math.sqrt(-Math.log(q < 0 ? p : 1 - p))
  const x = r <= nearEnds ? near(r - 1.6) : far(r - nearEnds)
  return q < 0 ? -x : x
}
