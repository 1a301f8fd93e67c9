/**
 * Root of a continuous function of one variable between two places where its sign differs.
 *
 * Method: regula falsi with the Illinois halving, falling back on bisection whenever three trials have not halved the
 * bracket (Dowell & Jarratt 1971, from memory). It never leaves the bracket, so a found root is always between the ends.
 */
import { limits } from './limits.ts'

export interface Bracket {
  readonly low: number
  readonly high: number
  readonly atLow: number
  readonly atHigh: number
}

/**
 * @param value the function; `undefined` where it does not exist
 * @returns the root to within `width` of its true place, or undefined when the ends do not differ in sign or the function
 *          does not exist somewhere on the way
 */
export function rootBetween(value: (x: number) => number | undefined, bracket: Bracket, width: number): number | undefined {
  let { low, high, atLow, atHigh } = bracket
  if (atLow === 0) return low
  if (atHigh === 0) return high
  if (atLow > 0 === atHigh > 0) return undefined
  let lastSide = 0
  let checkpoint = high - low
  for (let trial = 0; trial < limits.rootTrials; trial++) {
    if (Math.abs(high - low) <= width) break
    const bisect = trial % 3 === 2 && Math.abs(high - low) > Math.abs(checkpoint) / 2
    if (trial % 3 === 2) checkpoint = high - low
    const x = bisect ? (low + high) / 2 : low - (atLow * (high - low)) / (atHigh - atLow)
    const at = value(x)
    if (at === undefined) return undefined
    if (at === 0) return x
    if (at > 0 === atHigh > 0) {
      high = x
      atHigh = at
      if (lastSide === 1) atLow /= 2
      lastSide = 1
    } else {
      low = x
      atLow = at
      if (lastSide === -1) atHigh /= 2
      lastSide = -1
    }
  }
  return Math.abs(atLow) < Math.abs(atHigh) ? low : high
}
