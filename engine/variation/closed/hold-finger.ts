/**
 * The hold verdict of any set in the short way: closed margins, return reserve from rest there, the margins at which it jams and slips.
 *
 * `evaluate` follows a set from open to closed and works out some hundred figures. Where only this is asked for, and the set is nearly the one
 * that was drawn, it can be solved from the design as drawn: the same closure, the same stop, the same friction, at three places. What makes
 * it short is that nothing is read, planned or factored anew: tables are made once (flat-finger.ts), and each set is a list of numbers.
 *
 * It steps back, and says so, where it could not be the same finger: a pin that is not thinner than its hole, friction below nothing, another
 * stop or the end of the drive's range first, a closed posture near or past dead centre, no jam or slip where the design has one, or a
 * keeper that needs more than it is allowed already at the jam.
 */
import type { Variation } from '../sources/source.ts'
import { moveFlat } from './flat-motion.ts'
import { gapFlat } from './flat-posture.ts'
import { holdGuess } from './hold-guess.ts'
import {
  beginFrom,
  besideMargins,
  type HoldBegin,
  marginFlat,
  type Place,
  type RootGuess,
  readPlace,
  takeSet,
  type WayToRoot,
} from './hold-room.ts'
import { isKept, reserveValue, worstNow } from './hold-values.ts'
import { contactTurn, marginWhereZero } from './hold-window.ts'
import { marginByHalving } from './margin-by-halving.ts'
import type { FlatState } from './rest-room.ts'
import { type StandingHold, standingHold } from './standing-hold.ts'
import type { NotStraight } from './straight-numbers.ts'

/** Of one set: a closed margin a toggle (rad), return reserve (N·mm a pin), jam angle and slip angle (rad); NaN for what the design has not. */
export type HoldNumbers = Float64Array

/** Fingers of one design. */
export interface HoldFingers {
  readonly numbers_count: number
  /**
   * @param values one a source, as `Variation.setOf` takes them
   * @param out the set's numbers, where true comes back
   * @returns false where the long way has to say
   */
  readonly solve: (values: ArrayLike<number>, out: HoldNumbers) => boolean
}

/** Largest difference from the long way as drawn, of numbers about 1. */
const agrees = 1e-9

/** @returns the fingers of a design; or why the short way does not serve */
export function holdFingers(variation: Variation): HoldFingers | NotStraight {
  const standing = standingHold(variation)
  if ('why' in standing) return standing
  const { hold, lines, drawn } = standing
  const numbers_count = hold.toggles.length + besideMargins
  const out = new Float64Array(numbers_count)
  const solveFromDrawn = (values: ArrayLike<number>): HoldBegin | undefined => {
    lines.write(values, hold.room.numbers)
    const begin = standing.begin()
    if (!solveHold(standing, begin, out)) return undefined
    const { place, ways } = standing
    return { turn_rad: place.turn_rad, jam: { ...ways.jam.guess }, slip: { ...ways.slip.guess } }
  }
  if (!solveFromDrawn(variation.sources.map(({ nominal }) => nominal)))
    return { why: 'the closed posture as drawn is not found in the short way' }
  if (out.some((value, index) => Math.abs(value - drawn[index]) > agrees * Math.max(1, Math.abs(drawn[index]))))
    return { why: 'as drawn, the short way and the long way do not agree' }
  const guess = holdGuess(variation, solveFromDrawn)
  const solve = (values: ArrayLike<number>, numbers: HoldNumbers): boolean => {
    lines.write(values, hold.room.numbers)
    return solveHold(standing, guess(values), numbers)
  }
  return { numbers_count, solve }
}

function solveHold(standing: StandingHold, begin: HoldBegin, out: HoldNumbers): boolean {
  const { hold, place, states } = standing
  if (!takeSet(hold) || !closes(standing, begin, out)) return false
  const next = hold.toggles.length
  moveFlat(hold.room, hold.room.centres)
  readPlace(hold, place.turn_rad, place)
  beginFrom(hold, states.closed)
  out[next] = worstNow(hold, reserveValue)
  out[next + 1] = jamOf(standing, begin)
  out[next + 2] = slipOf(standing, begin)
  const isJam = out[next + 1] > 0 || states.jam === undefined
  const isSlip = out[next + 2] > out[next + 1] || states.slip === undefined
  return !Number.isNaN(out[next]) && isJam && isSlip
}

/** Brings the finger to its stop and its margins into `out`. @returns false where something else comes first */
function closes({ hold, place, closed_rad }: StandingHold, { turn_rad }: HoldBegin, out: HoldNumbers): boolean {
  place.turn_rad = contactTurn(hold, turn_rad)
  if (!(-place.turn_rad <= closed_rad)) return false
  const { stops } = hold.room.finger
  for (let stop = 0; stop < stops.length; stop++) if (stop !== hold.stop && !(gapFlat(hold.room, stops[stop]) > 0)) return false
  for (let toggle = 0; toggle < hold.toggles.length; toggle++) {
    out[toggle] = marginFlat(hold, toggle)
    if (!(out[toggle] > 0)) return false
  }
  return true
}

function jamOf(standing: StandingHold, { jam: guess }: HoldBegin): number {
  const { hold, states, ways } = standing
  if (!states.jam) return Number.NaN
  const jam = rootOf(standing, states.jam.state, guess, ways.jam)
  if (!states.slip || Number.isNaN(jam)) return jam
  moveFlat(hold.room, hold.room.centres)
  beginFrom(hold, states.slip.atJam)
  return isKept(hold) ? jam : Number.NaN
}

function slipOf(standing: StandingHold, { slip: guess }: HoldBegin): number {
  const { states, ways } = standing
  return states.slip ? rootOf(standing, states.slip.state, guess, ways.slip) : Number.NaN
}

/** @param way is written over; what it asks stands in it */
function rootOf({ hold, place }: StandingHold, state: FlatState, guess: RootGuess, way: WayToRoot): number {
  copyPlace(place, way.place)
  copyGuess(guess, way.guess)
  const root = marginWhereZero(hold, state, way)
  if (!Number.isNaN(root)) return root
  copyPlace(place, way.place)
  copyGuess(guess, way.guess)
  return marginByHalving(hold, state, way)
}

function copyGuess({ margin_rad, slope, bend_ratio }: RootGuess, to: RootGuess): void {
  to.margin_rad = margin_rad
  to.slope = slope
  to.bend_ratio = bend_ratio
}

function copyPlace({ turn_rad, margin_rad, rate }: Place, to: Place): void {
  to.turn_rad = turn_rad
  to.margin_rad = margin_rad
  to.rate = rate
}
