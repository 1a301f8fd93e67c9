/**
 * Root of a continuous function of one variable between two places where its sign differs.
 *
 * Method: inverse quadratic interpolation through the last three places where these say that the function bends little, bisection
 * elsewhere (T. R. Chandrupatla, Advances in Engineering Software 28, 1997, from memory). What differs: the first trial is the secant's,
 * because the brackets here are short steps of a path. It never leaves the bracket, and no trial is nearer to an end
 * than the width that is asked for, so the bracket closes from both sides: a smooth function takes about six trials.
 */
import { limits } from './limits.ts'

export interface Bracket {
  readonly low: number
  readonly high: number
  readonly atLow: number
  readonly atHigh: number
}

interface Point {
  readonly x: number
  readonly at: number
}

/**
 * @param value the function; `undefined` where it does not exist
 * @returns the root to within `width` of its true place, or undefined when the ends do not differ in sign or the function
 *          does not exist somewhere on the way
 */
export function rootBetween(value: (x: number) => number | undefined, bracket: Bracket, width: number): number | undefined {
  const { low, high, atLow, atHigh } = bracket
  if (atLow === 0) return low
  if (atHigh === 0) return high
  if (atLow > 0 === atHigh > 0) return undefined
  let near: Point = { x: high, at: atHigh }
  let across: Point = { x: low, at: atLow }
  let share = atHigh / (atHigh - atLow)
  for (let trial = 0; trial < limits.rootTrials; trial++) {
    const least = width / Math.abs(across.x - near.x)
    if (least >= 0.5) break
    const x = near.x + Math.min(1 - least, Math.max(least, share)) * (across.x - near.x)
    const at = value(x)
    if (at === undefined) return undefined
    if (at === 0) return x
    const sameSide = at > 0 === near.at > 0
    const left = sameSide ? near : across
    if (!sameSide) across = near
    near = { x, at }
    share = shareTowards(near, across, left)
  }
  return Math.abs(near.at) < Math.abs(across.at) ? near.x : across.x
}

/** Share of the way from `near` to `across` at which to try next. @param left the place that has just left the bracket */
function shareTowards(near: Point, across: Point, left: Point): number {
  const place = (near.x - across.x) / (left.x - across.x)
  const height = (near.at - across.at) / (left.at - across.at)
  const bendsLittle = height * height < place && (1 - height) * (1 - height) < 1 - place
  if (!bendsLittle) return 0.5
  const first = (near.at / (across.at - near.at)) * (left.at / (across.at - left.at))
  const second = (near.at / (left.at - near.at)) * (across.at / (left.at - across.at))
  return first + ((left.x - near.x) / (across.x - near.x)) * second
}
