/** The design as drawn, made ready for the short way: its tables, its three places, and the states of friction that sets begin from. */

import { pinCentre } from '../../motion/mechanism.ts'
import type { PathNode } from '../../motion/path.ts'
import type { Variation } from '../sources/source.ts'
import { flatFinger } from './flat-finger.ts'
import { bendFlat, placeFlat, takeArms, turnLeadsAlike } from './flat-posture.ts'
import { type FlatRoom, flatRoom } from './flat-room.ts'
import type { FlatFinger } from './flat-tables.ts'
import { type FollowedFinger, followedFinger, holdNumbersOf } from './hold-plainly.ts'
import {
  besideMargins,
  type FlatToggle,
  type HoldBegin,
  type HoldRoom,
  type HoldValue,
  holdRoom,
  type Place,
  somewhere,
  takeSets,
  type WayToRoot,
} from './hold-room.ts'
import { type HoldStates, holdStates } from './hold-states.ts'
import { excessValue, reserveValue } from './hold-values.ts'
import { type NotStraight, type StraightNumbers, straightNumbers } from './straight-numbers.ts'
import { leaveOut, type Untold, untoldOf } from './untold.ts'

/** A design that sets are solved from. */
export interface StandingHold {
  readonly hold: HoldRoom
  readonly lines: StraightNumbers
  /** Hold numbers as drawn, by the long way. */
  readonly drawn: Float64Array
  /** Where the design as drawn closes, jams and slips; a fresh one, for a set to begin from. */
  readonly begin: () => HoldBegin
  readonly states: HoldStates
  /** Numbers that are left out of every set. */
  readonly untold: readonly Untold[]
  /** Whether the travel as drawn begins where the drive does. */
  readonly opensAsDriven: boolean
  /** Where the set closes, and the ways from there to where it jams and slips. */
  readonly place: Place
  readonly ways: { readonly jam: WayToRoot; readonly slip: WayToRoot }
}

/** Turns nearer than this are the same but for rounding, rad. */
const same_rad = 1e-9

/** @returns why not, where the short way does not serve */
export function standingHold(variation: Variation): StandingHold | NotStraight {
  const base = variation.setOf(variation.sources.map(({ nominal }) => nominal)).value
  if (!base) return { why: 'the design as drawn is refused as a set' }
  const finger = flatFinger(base)
  if ('why' in finger) return finger
  const followed = followedFinger(base)
  if (followed?.path.end.by !== 'stop') return { why: 'the travel does not end at a stop' }
  if (!(finger.lead.opens * followed.closed.tangent[leadColumn(finger) - 3] < 0))
    return { why: 'the drive turns back before the stop' }
  const lines = straightNumbers(variation, finger.numbers)
  if ('why' in lines) return lines
  const room = flatRoom({ finger, drawn: lines.drawn, ...sidesOf(finger, followed), sets_count: 1 })
  const turn = ({ posture }: PathNode): number => posture[leadColumn(finger)]
  takeArms(room)
  turnLeadsAlike(room, turn(followed.closed))
  placeFlat(room)
  if (room.arms.some(({ x }) => Number.isNaN(x[0]))) return { why: 'it closes too near to a dead centre' }
  const hold = holdRoom(room, { stop: followed.path.end.stop, toggles: togglesOf(room, followed) })
  const isFit = new Uint8Array(1)
  takeSets(hold, isFit)
  if (isFit[0] === 0) return { why: 'a pin is not thinner than its hole' }
  const states = holdStates(hold, followed, turn)
  if (!states) return { why: 'no state of friction is found where it closes, jams or slips' }
  if (states.jam && hold.toggles[0].closes < 0) return { why: 'it jams on its way past dead centre' }
  const untold = untoldOf(states)
  const drawn = new Float64Array(hold.toggles.length + besideMargins)
  holdNumbersOf(followed, drawn)
  leaveOut(untold, drawn)
  const opensAsDriven = Math.abs(turn(followed.path.nodes[0]) - room.firstTurn[0]) < same_rad
  return {
    ...{ hold, lines, drawn, states, untold, opensAsDriven },
    begin: () => beginAt(turn(followed.closed), drawn, states),
    ...{ place: somewhere(), ways: { jam: wayTo(reserveValue), slip: wayTo(excessValue) } },
  }
}

function beginAt(turn_rad: number, drawn: Float64Array, { jam, slip }: HoldStates): HoldBegin {
  const [jam_rad, slip_rad] = drawn.slice(-2)
  return {
    turn_rad,
    jam: { margin_rad: jam_rad, slope: jam?.slope ?? Number.NaN, bend_ratio: jam?.bend_ratio ?? 1 },
    slip: { margin_rad: slip_rad, slope: slip?.slope ?? Number.NaN, bend_ratio: slip?.bend_ratio ?? 1 },
  }
}

function wayTo(value: HoldValue): WayToRoot {
  return { place: somewhere(), guess: { margin_rad: 0, slope: 0, bend_ratio: 1 }, value }
}

function leadColumn({ lead }: FlatFinger): number {
  return 3 * lead.part + 2
}

function sidesOf({ dyads }: FlatFinger, { path: { mechanism }, closed }: FollowedFinger): Pick<FlatRoom, 'sides' | 'nearest'> {
  const centre = (joint: number) => pinCentre(mechanism, closed.posture, mechanism.joints[joint].pin)
  const sines = dyads.map(({ p, q, s }) => {
    const [atP, atQ, atS] = [centre(p), centre(q), centre(s)]
    const [ax, ay, bx, by] = [atQ.x_mm - atP.x_mm, atQ.y_mm - atP.y_mm, atQ.x_mm - atS.x_mm, atQ.y_mm - atS.y_mm]
    return (ax * by - ay * bx) / (Math.hypot(ax, ay) * Math.hypot(bx, by))
  })
  const sizes = sines.map(Math.abs)
  // With q to the left of the way from p to s, the turn from a to b is counter-clockwise the long way round: a × b is positive.
  return { sides: Float64Array.from(sines, Math.sign), nearest: sizes.indexOf(Math.min(...sizes)) }
}

function togglesOf(room: FlatRoom, { path, closed }: FollowedFinger): readonly FlatToggle[] {
  const drawn = new Float64Array(path.toggles.length + besideMargins)
  holdNumbersOf({ path, closed, reserve: 0, neverSlips: false }, drawn)
  const bend = new Float64Array(1)
  return path.toggles.map(({ side, angle }, index): FlatToggle => {
    bendFlat(room, room.finger.toggles[index], bend)
    const offset_rad = drawn[index] - side * bend[0]
    // By half turns: what is left is rounding.
    const { first, second } = angle
    return { closes: drawn[index] < 0 ? -1 : 1, side, offset_rad: Math.PI * Math.round(offset_rad / Math.PI), first, second }
  })
}
