/**
 * The hold window of a flat finger that stands alone: where it closes, how much return is left there from rest, and the margins at which it jams and slips.
 *
 *     closed: gap of the stop = 0        jam: return reserve from rest = 0        slip: what the keeper needs = what it is allowed
 *
 * All three are roots along the path. Near dead centre δ² follows the lead's turn in a nearly straight line, and what is asked follows δ in
 * one; so a trial aims at a margin by the slope of the value, and turns the lead there by the slope of δ². Three trials are usual.
 */
import { moveFlat } from './flat-motion.ts'
import { placeFlat, turnLeadsAlike } from './flat-posture.ts'
import { gapFlat, gapRateFlat } from './flat-stop.ts'
import { beginFrom, type HoldRoom, placeNow, standAt, straightWay, type WayToRoot } from './hold-room.ts'
import { valueOnSides } from './hold-values.ts'
import type { FlatState } from './rest-room.ts'

/** Rounds of Newton's method for the stop's contact: three are usual. */
const contactRounds = 12
/** A turn of the lead after which the next contact has all its digits, rad. */
const contactSettled_rad = 1e-10
/** What stands for the way from the trial before the first: the slope that is guessed may be a tenth off. */
const slopeOff_rad = 0.1
/** Times that pins are put on other sides at one root. */
const turnsOver_most = 4
/** Trials for a margin: where so many do not settle, the value jumps. */
const marginTrials = 6
/** Product of the ways to the margin from the last two trials below which it is that margin: what is left is at most ten times this, rad. */
const marginSettled_rad2 = 2e-11
/** Trials nearer than this tell nothing of the slope but rounding, rad. */
const apartLeast_rad = 1e-8

/** Turn of the lead at which the stop touches, NaN where none is found; posture and motion stand in the room. @param begin near it */
export function contactTurn({ room, stop, rate: gapRate }: HoldRoom, begin: number): number {
  const touching = room.finger.stops[stop]
  let turn_rad = begin
  for (let round = 0; round < contactRounds; round++) {
    turnLeadsAlike(room, turn_rad)
    placeFlat(room)
    gapFlat(room, touching)
    if (round === 0) {
      // One rate serves: the gap bends little over the way that is left.
      moveFlat(room, room.centres)
      gapRateFlat(room, touching, gapRate)
    }
    const step_rad = room.contact.gap[0] / gapRate[0]
    turn_rad -= step_rad
    if (!(Math.abs(step_rad) >= contactSettled_rad)) break
  }
  turnLeadsAlike(room, turn_rad)
  placeFlat(room)
  return turn_rad
}

/**
 * Margin at which a value is zero in its worst state of friction; NaN where it is not found. Posture and motion of the last trial stand in
 * the room.
 *
 * On given sides the value is smooth; in the worst state it has a kink in the jam, where the lead stands still and its pins change sides. So
 * the root is found on the sides of the design as drawn, and again on others while these are worse. Where two roots ask for each other's
 * sides, the kink lies between them and the worse one counts.
 *
 * @param place where the way begins; afterwards where the last trial stood
 * @param guess where it about is; afterwards where the last root is
 */
export function marginWhereZero(hold: HoldRoom, state: FlatState, way: WayToRoot): number {
  const { guess, place, value } = way
  const begun = { ...place }
  beginFrom(hold, state)
  let worst_rad = rootOnSides(hold, way, true)
  if (Number.isNaN(worst_rad)) return Number.NaN
  guess.bend_ratio = (place.turn_rad - begun.turn_rad) / straightWay(begun, place.margin_rad)
  const { slope } = guess
  const first_rad = worst_rad
  for (let turned = 0; turned < turnsOver_most; turned++) {
    value.turnOver(hold)
    if (hold.turned[0] === 0) break
    const root_rad = rootOnSides(hold, way, false)
    if (Number.isNaN(root_rad)) return Number.NaN
    if (!(value.worse * (root_rad - worst_rad) > 0)) break
    worst_rad = root_rad
  }
  // The sides as drawn are where the next set begins.
  guess.slope = slope
  guess.margin_rad = first_rad
  return worst_rad
}

/** @param isLong whether the way begins at the closed posture and not near the root */
function rootOnSides(hold: HoldRoom, { place, guess, value: asked }: WayToRoot, isLong: boolean): number {
  let value = Number.NaN
  let left_rad = slopeOff_rad
  for (let trial = 0; trial < marginTrials; trial++) {
    const aimed = guess.margin_rad
    const from = place.margin_rad
    const turn_rad = place.turn_rad + (isLong && trial === 0 ? guess.bend_ratio : 1) * straightWay(place, aimed)
    if (!(aimed > 0)) return Number.NaN
    standAt(hold, turn_rad)
    placeNow(hold, place)
    const before = value
    value = valueOnSides(hold, asked)
    if (trial > 0 && Math.abs(place.margin_rad - from) > apartLeast_rad)
      guess.slope = (value - before) / (place.margin_rad - from)
    guess.margin_rad = place.margin_rad - value / guess.slope
    const last_rad = left_rad
    left_rad = Math.abs(guess.margin_rad - place.margin_rad)
    if (Number.isNaN(left_rad)) return Number.NaN
    if (left_rad * last_rad < marginSettled_rad2) return guess.margin_rad
  }
  return Number.NaN
}
