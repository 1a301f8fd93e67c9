import { beginFrom, type HoldRoom, placeNow, standAt, straightWay, type WayToRoot } from './hold-room.ts'
import { worstNow } from './hold-values.ts'
import type { FlatState } from './rest-room.ts'

/** Steps in which a change of sign is looked for, and their length as a share of the margin that is guessed: on to a third and three times of it. */
const steps_most = 24
const step_ratio = 0.05
/** Halvings of such a step: some 1e-14 rad are left. */
const halvings = 40

/**
 * Margin at which a value in its worst state changes its sign, also where it jumps there: the drag of a pin turns round with the pin, and the
 * value with it. Steps from the guess towards the change, then halves.
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
  let near = place.turn_rad + guess.bend_ratio * straightWay(place, guess.margin_rad)
  const begin = valueAt(near)
  // Both values rise with the margin.
  const step = (Math.sign(-begin) * step_ratio * guess.margin_rad) / place.rate
  let far = near
  for (let count = 0; Math.sign(valueAt(far + step)) === Math.sign(begin); count++) {
    if (count === steps_most) return Number.NaN
    far += step
  }
  near = far
  far += step
  for (let halved = 0; halved < halvings; halved++) {
    const middle = (near + far) / 2
    const now = valueAt(middle)
    if (Number.isNaN(now)) return Number.NaN
    if (Math.sign(now) === Math.sign(begin)) near = middle
    else far = middle
  }
  return Number.isNaN(valueAt(far)) ? Number.NaN : place.margin_rad
}
