/**
 * The hold verdict of a set that stands alone in its room, trial by trial for as long as it takes: for sets that are not solved in step with
 * others (hold-together.ts), and for the design as drawn.
 *
 * It steps back where it could not be the same finger: a pin that is not thinner than its hole, friction below nothing, another stop or the end
 * of the drive's range first, a closed posture on the other side of dead centre than the one drawn, no jam or slip where the design has one, or a keeper that needs
 * more than it is allowed already at the jam.
 */
import { moveFlat } from './flat-motion.ts'
import { gapFlat } from './flat-stop.ts'
import {
  beginFrom,
  type HoldBegin,
  marginsFlat,
  type Place,
  placeNow,
  type RootGuess,
  readPlaces,
  takeSets,
  type WayToRoot,
} from './hold-room.ts'
import { excessValue, reserveValue, worstNow } from './hold-values.ts'
import { contactTurn, marginWhereZero } from './hold-window.ts'
import { marginByHalving } from './margin-by-halving.ts'
import { neverSlips } from './never-slips.ts'
import type { FlatState } from './rest-room.ts'
import type { StandingHold } from './standing-hold.ts'

const isFit = new Uint8Array(1)

/**
 * Solves the set whose numbers stand in the room.
 *
 * @param out its hold numbers, where true comes back
 * @returns false where the long way has to say
 */
export function solveAlone(standing: StandingHold, begin: HoldBegin, out: Float64Array): boolean {
  const { hold, place, states } = standing
  takeSets(hold, isFit)
  if (isFit[0] === 0 || !closes(standing, begin, out)) return false
  const next = hold.toggles.length
  moveFlat(hold.room, hold.room.centres)
  readPlaces(hold)
  placeNow(hold, place)
  out[next] = reserveOf(standing)
  out[next + 1] = jamOf(standing, begin)
  out[next + 2] = slipOf(standing, begin)
  const isReserve = !Number.isNaN(out[next]) || states.closed === undefined
  const isJam = out[next + 1] > 0 || states.jam === undefined
  const isSlip = out[next + 2] > out[next + 1] || states.keptAtJam === undefined
  return isReserve && isJam && isSlip
}

/** Brings the finger to its stop and its margins into `out`. @returns false where something else comes first */
function closes({ hold, place }: StandingHold, { turn_rad }: HoldBegin, out: Float64Array): boolean {
  place.turn_rad = contactTurn(hold, turn_rad)
  const { finger, lastTurn } = hold.room
  const { stops, lead } = finger
  if (!(lead.opens * (place.turn_rad - lastTurn[0]) >= 0)) return false
  for (let stop = 0; stop < stops.length; stop++) {
    if (stop === hold.stop) continue
    gapFlat(hold.room, stops[stop])
    if (!(hold.room.contact.gap[0] > 0)) return false
  }
  for (let toggle = 0; toggle < hold.toggles.length; toggle++) {
    marginsFlat(hold, toggle, hold.margin)
    out[toggle] = hold.margin[0]
    if (!(hold.toggles[toggle].closes * out[toggle] > 0)) return false
  }
  return true
}

function reserveOf({ hold, states: { closed } }: StandingHold): number {
  if (!closed) return Number.NaN
  beginFrom(hold, closed)
  return worstNow(hold, reserveValue)
}

function jamOf(standing: StandingHold, { jam: guess }: HoldBegin): number {
  const { hold, states, ways } = standing
  if (!states.jam) return Number.NaN
  const jam = rootOf(standing, states.jam.state, guess, ways.jam)
  if (!states.keptAtJam || Number.isNaN(jam)) return jam
  moveFlat(hold.room, hold.room.centres)
  beginFrom(hold, states.keptAtJam)
  return worstNow(hold, excessValue) <= 0 ? jam : Number.NaN
}

function slipOf(standing: StandingHold, { slip: guess }: HoldBegin): number {
  const { hold, states, ways, opensAsDriven } = standing
  if (!states.keptAtJam) return Number.NaN
  const slip = states.slip ? rootOf(standing, states.slip.state, guess, ways.slip) : Number.NaN
  // Beyond where the drive begins no finger stands.
  const { firstTurn, finger } = hold.room
  if (finger.lead.opens * (firstTurn[0] - ways.slip.place.turn_rad) >= 0 && !Number.isNaN(slip)) return slip
  return opensAsDriven && neverSlips(hold, states.keptAtJam, ways.jam.place.turn_rad) ? Number.POSITIVE_INFINITY : Number.NaN
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
