import { beginFrom, type HoldRoom, standAt } from './hold-room.ts'
import { excessValue, worstNow } from './hold-values.ts'
import type { FlatState } from './rest-room.ts'

/** Steps from the jam out to where the drive begins: what the keeper needs has one top between, and a wide one. */
const steps_count = 32

/**
 * Whether the keeper of a set that stands alone needs no more than it is allowed anywhere from its jam out to where the drive begins. With
 * much friction no load opens the finger, however small its keeper.
 *
 * @param state of the kept load at the jam as drawn
 * @returns false also where no state of friction is found on the way
 */
export function neverSlips(hold: HoldRoom, state: FlatState, jam_rad: number): boolean {
  beginFrom(hold, state)
  const way_rad = hold.room.firstTurn[0] - jam_rad
  for (let step = 0; step <= steps_count; step++) {
    standAt(hold, jam_rad + (way_rad * step) / steps_count)
    if (!(worstNow(hold, excessValue) <= 0)) return false
  }
  return true
}
