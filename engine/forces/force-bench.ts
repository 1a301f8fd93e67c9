/**
 * What every force question of one design shares: levers of friction in each state, masses, the drive, the drawn posture.
 */
import type { Design, FrictionPair } from '../design/design.ts'
import { partMass } from '../design/mass.ts'
import type { ForceRow } from '../motion/closure.ts'
import type { Condition } from '../motion/condition.ts'
import type { Mechanism } from '../motion/mechanism.ts'
import { emptyRow, type ForceFrame, passingRow, powerIn, turnIn, turnPattern } from './force-frame.ts'
import { type ForceRoom, forceRoom } from './force-room.ts'
import { frictionLever } from './friction-lever.ts'
import { addSpring, addSprings, fillWeight, type PartMass, type WeightRows } from './loads.ts'
import { worstAttitude } from './worst-attitude.ts'

/** Level of a friction pair: hold at the least, letting go at the most. */
export type FrictionLevel = 'least' | 'likely' | 'most'

export interface ForceBench {
  readonly mechanism: Mechanism
  readonly room: ForceRoom
  /** Assembled drawn posture: springs and strokes are counted from it. */
  readonly drawn: Float64Array
  readonly drive: Condition
  readonly masses: readonly PartMass[]
  /** Standing loads of the posture that was asked last. */
  readonly standing: Record<Standing, StandingRow>
  /** Weight at the posture that was asked last. */
  readonly weight: KnownWeight
  readonly leversOf: (state: 'moving' | 'rest', level: FrictionLevel) => Float64Array
}

/** @param drawn assembled drawn posture. @param drive its coordinate, whose derivative is the unit effort */
export function forceBench(mechanism: Mechanism, drawn: Float64Array, drive: Condition): ForceBench {
  const levels = (state: 'moving' | 'rest'): Record<FrictionLevel, Float64Array> => ({
    least: jointLevers(mechanism, (pair) => pair[state].least),
    likely: jointLevers(mechanism, (pair) => pair[state].likely),
    most: jointLevers(mechanism, (pair) => pair[state].most),
  })
  const levers = { moving: levels('moving'), rest: levels('rest') }
  const leversOf: ForceBench['leversOf'] = (state, level) => levers[state][level]
  const masses = mechanism.design.weight ? movingMasses(mechanism.design) : []
  const room = forceRoom(mechanism)
  const weight = { forward: room.stock(mechanism.columns_count), upward: room.stock(mechanism.columns_count), ticket: -1 }
  return { mechanism, room, drawn, drive, masses, standing: standingRows(room), weight, leversOf }
}

/** Masses of the moving parts as far as they are known. */
function movingMasses(design: Design): PartMass[] {
  return design.parts.flatMap((part, index) => {
    const mass = index > 0 ? partMass(part) : undefined
    return mass ? [{ part: index, mass_kg: mass.mass_kg, centre: mass.centreOfMass }] : []
  })
}

/** |κ| of each joint: the friction circle's radius of a pin, mm; the coefficient itself where a pin slides in a slot. */
export function jointLevers(mechanism: Mechanism, coefficientOf: (pair: FrictionPair) => number): Float64Array {
  return Float64Array.from(mechanism.joints, (joint) => {
    const coefficient = coefficientOf(mechanism.design.pins[joint.pin].friction)
    return joint.kind === 'pin' ? frictionLever(joint.radius_mm, coefficient) : coefficient
  })
}

/**
 * What acts at a posture whatever the load case: springs with their own friction, declared drag against the motion, and weight in
 * the attitude that is worst for what is asked.
 *
 *   letting go   springs with their own friction against the motion, weight pulling closed    (frame opening)
 *   held         springs whole, weight pulling open                                           (frame opening)
 *   stopped      springs whole, weight pulling closed, onto the stop                          (frame opening)
 *   closing      springs with their own friction against the motion, weight pulling open      (frame closing)
 *
 * A spring that drives the motion gives 1 − h of its action, one that is wound by it takes 1 + h: our choice, a symmetric band.
 */
export type Standing = 'letting go' | 'held' | 'stopped' | 'closing'

const STANDING: Record<Standing, { readonly rubbingSprings: boolean; readonly weight: 'hinders' | 'helps' }> = {
  'letting go': { rubbingSprings: true, weight: 'hinders' },
  held: { rubbingSprings: false, weight: 'helps' },
  stopped: { rubbingSprings: false, weight: 'hinders' },
  closing: { rubbingSprings: true, weight: 'hinders' },
}

interface KnownWeight extends WeightRows {
  ticket: number
}

interface StandingRow {
  readonly out: Float64Array
  ticket: number
  attitude_rad: number | undefined
}

/** A fresh row with the standing load of a state, to which a load case can be added. */
export function standingLoad(bench: ForceBench, frame: ForceFrame, state: Standing): ForceRow {
  const row = emptyRow(frame)
  row.out.set(standingRow(bench, frame, state).out)
  return row
}

/** Direction in which the weight pulls in a state, mount frame, rad; undefined when weight is left out. */
export function standingAttitude(bench: ForceBench, frame: ForceFrame, state: Standing): number | undefined {
  return standingRow(bench, frame, state).attitude_rad
}

/** Worked out once a posture and state. */
function standingRow(bench: ForceBench, frame: ForceFrame, state: Standing): StandingRow {
  const known = bench.standing[state]
  if (known.ticket === frame.ticket) return known
  const { rubbingSprings, weight } = STANDING[state]
  known.ticket = frame.ticket
  known.out.fill(0)
  const row = { mechanism: frame.mechanism, posture: frame.posture, out: known.out, start: 0 }
  if (rubbingSprings) addRubbingSprings(bench, frame, row)
  else addSprings(row, bench.drawn)
  addDrag(row, frame)
  known.attitude_rad = addWorstWeight(bench, frame, row, weight)
  return known
}

function addRubbingSprings(bench: ForceBench, frame: ForceFrame, row: ForceRow): void {
  for (const spring of bench.mechanism.design.springs) {
    const whole = passingRow(frame)
    addSpring(whole, spring, bench.drawn)
    const share = 1 - spring.ownFriction_ratio * Math.sign(powerIn(frame, whole.out))
    for (let column = 0; column < row.out.length; column++) row.out[column] += share * whole.out[column]
  }
}

function standingRows({ mechanism, stock }: ForceRoom): Record<Standing, StandingRow> {
  const row = (): StandingRow => ({ out: stock(mechanism.columns_count), ticket: -1, attitude_rad: undefined })
  return { 'letting go': row(), held: row(), stopped: row(), closing: row() }
}

function addDrag(row: ForceRow, frame: ForceFrame): void {
  frame.mechanism.joints.forEach((joint, index) => {
    const drag_Nmm = frame.mechanism.design.pins[joint.pin].drag_Nmm
    if (drag_Nmm > 0) turnPattern(row, joint, -Math.sign(turnIn(frame, index)) * drag_Nmm)
  })
}

/**
 * Adds the weight in the attitude that hinders the frame's motion most (`hinders`) or helps it most, within the stated range.
 *
 * The power of the weight is c cos α + s sin α; its extreme in the range is at atan2(s, c) or half a turn on, or at an end.
 * Friction shifts that attitude only in second order.
 * @returns the direction of the pull in the mount frame, rad, or undefined when weight is left out
 */
export function addWorstWeight(
  bench: ForceBench,
  frame: ForceFrame,
  row: ForceRow,
  worst: 'hinders' | 'helps',
): number | undefined {
  const range = bench.mechanism.design.weight
  if (!range || bench.masses.length === 0) return undefined
  const { forward, upward } = weightRows(bench, frame)
  const c = powerIn(frame, forward)
  const s = powerIn(frame, upward)
  const sign = worst === 'helps' ? 1 : -1
  const towards_rad = worstAttitude(range, { along: sign * c, across: sign * s })
  const x = Math.cos(towards_rad)
  const y = Math.sin(towards_rad)
  for (let column = 0; column < row.out.length; column++) row.out[column] += x * forward[column] + y * upward[column]
  return towards_rad
}

/** All weight along x and along y of the mount frame, worked out once a posture. */
function weightRows({ masses, weight }: ForceBench, frame: ForceFrame): WeightRows {
  if (weight.ticket === frame.ticket) return weight
  weight.ticket = frame.ticket
  fillWeight(weight, masses, frame.room)
  return weight
}
