/** Where the stops of a block of sets touch, in step. */
import type { Column } from './columns.ts'
import { moveFlat } from './flat-motion.ts'
import { placeFlat, turnLeads } from './flat-posture.ts'
import type { FlatRoom } from './flat-room.ts'
import { gapFlat, gapRateFlat } from './flat-stop.ts'
import type { HoldRoom } from './hold-room.ts'

/** Square of the turn of the lead before the last times the last, below which the contact has all its digits: a parabola leaves the cube of the way. */
const settled_rad3 = 1e-12
/** Trials, each but the first with the rate that a parabola gives it. */
const trials_count = 3
/** Turns smaller than this tell nothing of the gap's rate but rounding, rad. */
const apartLeast_rad = 1e-8

/** Turns the leads of all sets to where the stop touches, and places them there. @param begin near it, rad. @param isSolved out: 0 for sets that have not settled */
export function contactsTogether(hold: HoldRoom, begin: Column, isSolved: Uint8Array): void {
  const { room, stop, rate, turned: last } = hold
  const { turn, contact, finger } = room
  turn.set(begin)
  lookAtGaps(room, stop)
  moveFlat(room, room.centres)
  gapRateFlat(room, finger.stops[stop], rate)
  for (let set = 0; set < turn.length; set++) {
    last[set] = contact.gap[set] / rate[set]
    turn[set] -= last[set]
  }
  for (let trial = 1; trial < trials_count; trial++) {
    lookAtGaps(room, stop)
    for (let set = 0; set < turn.length; set++) {
      // The rate of a parabola through both gaps that has the rate of the one before.
      if (Math.abs(last[set]) > apartLeast_rad) rate[set] -= (2 * contact.gap[set]) / last[set]
      const next = contact.gap[set] / rate[set]
      turn[set] -= next
      if (trial === trials_count - 1 && !(last[set] * last[set] * Math.abs(next) < settled_rad3)) isSolved[set] = 0
      last[set] = next
    }
  }
  turnLeads(room)
  placeFlat(room)
}

function lookAtGaps(room: FlatRoom, stop: number): void {
  turnLeads(room)
  placeFlat(room)
  gapFlat(room, room.finger.stops[stop])
}
