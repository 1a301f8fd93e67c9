import { rootBetween } from '../../numbers/root.ts'
import { beginFrom, type HoldRoom, placeNow, standAt, straightWay, type WayToRoot } from './hold-room.ts'
import { worstNow } from './hold-values.ts'
import type { FlatState } from './rest-room.ts'
import { turningPlaces } from './turning-places.ts'

/** Steps in which a change of sign is looked for, and their length as a share of the margin that is guessed: on to a third and three times of it. */
const steps_most = 24
const step_ratio = 0.05
/** To what the lead's turn is found, rad. */
const width_rad = 1e-12

/**
 * Margin at which a value in its worst state changes its sign, also where it jumps there: the drag of a pin turns round with the pin, and the
 * value with it. Steps from the guess towards the change, looks at both sides of where pins turn round, and halves where it is not there.
 *
 * @param way as `marginWhereZero` takes it
 * @returns NaN where no change is found
 */
export function marginByHalving(hold: HoldRoom, state: FlatState, { place, guess, value }: WayToRoot): number {
  const valueAt = (turn_rad: number): number => {
    standAt(hold, turn_rad)
    placeNow(hold, place)
    beginFrom(hold, state)
    return worstNow(hold, value)
  }
  const near = place.turn_rad + guess.bend_ratio * straightWay(place, guess.margin_rad)
  const begin = valueAt(near)
  // Both values rise with the margin.
  const step = (Math.sign(-begin) * step_ratio * guess.margin_rad) / place.rate
  let far = near
  for (let count = 0; Math.sign(valueAt(far + step)) === Math.sign(begin); count++) {
    if (count === steps_most) return Number.NaN
    far += step
  }
  const differ = (one: number, other: number): boolean => valueAt(one) > 0 !== valueAt(other) > 0
  const jump = turningPlaces(hold, { from: far, to: far + step, width: width_rad }).find((at) =>
    differ(at - width_rad, at + width_rad),
  )
  const bracket = { low: far, high: far + step, atLow: valueAt(far), atHigh: valueAt(far + step) }
  const found = jump ?? rootBetween(valueAt, bracket, width_rad)
  return found === undefined || Number.isNaN(valueAt(found)) ? Number.NaN : place.margin_rad
}
