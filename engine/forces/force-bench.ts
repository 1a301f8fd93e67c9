/**
 * What every force question of one design shares: levers of friction in each state, masses, the drive, the drawn posture.
 */
import type { Design, FrictionPair } from '../design/design.ts'
import { partMass } from '../design/mass.ts'
import type { ForceRow } from '../motion/closure.ts'
import type { Condition } from '../motion/condition.ts'
import type { Mechanism } from '../motion/mechanism.ts'
import { emptyRow, type ForceFrame, turnPattern } from './force-frame.ts'
import { frictionLever } from './friction-lever.ts'
import { addSprings, addWeight, type PartMass, type SpringState } from './loads.ts'

/** Level of a friction pair: hold at the least, letting go at the most. */
export type FrictionLevel = 'least' | 'likely' | 'most'

export interface ForceBench {
  readonly mechanism: Mechanism
  /** Assembled drawn posture: springs and strokes are counted from it. */
  readonly drawn: Float64Array
  readonly drive: Condition
  readonly masses: readonly PartMass[]
  readonly leversOf: (state: 'moving' | 'rest', level: FrictionLevel) => Float64Array
}

export function forceBench(mechanism: Mechanism, drawn: Float64Array, drive: Condition): ForceBench {
  const known = new Map<string, Float64Array>()
  const leversOf = (state: 'moving' | 'rest', level: FrictionLevel): Float64Array => {
    const key = `${state} ${level}`
    const found = known.get(key) ?? jointLevers(mechanism, (pair) => pair[state][level])
    known.set(key, found)
    return found
  }
  const masses = mechanism.design.weight ? movingMasses(mechanism.design) : []
  return { mechanism, drawn, drive, masses, leversOf }
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

/** Springs, and declared drag against the frame's motion: what acts at a posture whatever the load. */
export function standingLoad(bench: ForceBench, frame: ForceFrame, springs: SpringState): ForceRow {
  const row = emptyRow(frame)
  addSprings(row, bench.drawn, springs)
  addDrag(row, frame)
  return row
}

function addDrag(row: ForceRow, frame: ForceFrame): void {
  frame.mechanism.joints.forEach((joint, index) => {
    const drag_Nmm = frame.mechanism.design.pins[joint.pin].drag_Nmm
    if (drag_Nmm > 0) turnPattern(row, joint, -Math.sign(frame.turns[index]) * drag_Nmm)
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
  const powerAt = (towards_rad: number): number => {
    const weight = emptyRow(frame)
    addWeight(weight, bench.masses, towards_rad)
    return weight.out.reduce((sum, value, column) => sum + value * frame.motion[column], 0)
  }
  const helping_rad = Math.atan2(powerAt(Math.PI / 2), powerAt(0))
  const wanted = worst === 'helps' ? helping_rad : helping_rad + Math.PI
  const turnsOn = Math.ceil((range.from_rad - wanted) / (2 * Math.PI))
  const inRange = wanted + 2 * Math.PI * turnsOn
  const sign = worst === 'helps' ? 1 : -1
  const ends = powerAt(range.from_rad) * sign >= powerAt(range.to_rad) * sign ? range.from_rad : range.to_rad
  const towards_rad = inRange <= range.to_rad ? inRange : ends
  addWeight(row, bench.masses, towards_rad)
  return towards_rad
}
