/** What pulls on the finger at a posture, as generalised forces: ports, load cases, springs, weight, drag. */
import type { LoadCase, PadForceDirection, Port, Spring } from '../design/design.ts'
import { addCouple, addForce, type ClosureRoom, type ForceRow } from '../motion/closure.ts'
import { type Condition, distance } from '../motion/condition.ts'
import { type Mechanism, placed } from '../motion/mechanism.ts'
import type { Vector } from '../numbers/vector.ts'

/** Standard gravity, m/s² (CGPM 1901, from memory). */
export const GRAVITY_M_S2 = 9.80665

/** Unit pattern of a port. A couple port is clockwise on its part, so that a positive amplitude flexes. */
export function addPort(row: ForceRow, port: Port, drive: Condition): void {
  if (port.kind === 'drive') drive.addDerivative(row)
  else if (port.kind === 'couple') {
    addCouple(row, { part: port.part, couple: -1 })
    addCouple(row, { part: port.against, couple: 1 })
  } else addPadForce(row, port, 1)
}

/** Force on a pad in the direction given in a part's frame. */
export function addPadForce(row: ForceRow, on: PadForceDirection, force_N: number): void {
  const direction = on.direction_rad + row.posture[3 * on.frame + 2]
  const force: Vector = { x: force_N * Math.cos(direction), y: force_N * Math.sin(direction) }
  addForce(row, { part: on.part, at: placed(row.posture, on.part, padOf(row.mechanism, on)), force })
}

function padOf(mechanism: Mechanism, on: PadForceDirection): { x_mm: number; y_mm: number } {
  return mechanism.design.parts[on.part].pads[on.pad].at
}

/** All forces and couples of a load case that act in the plane. */
export function addLoadCase(row: ForceRow, loadCase: LoadCase): void {
  for (const force of loadCase.forces) addPadForce(row, force, force.force_N)
  for (const { part, against, couple_Nmm } of loadCase.couples) {
    addCouple(row, { part, couple: couple_Nmm })
    addCouple(row, { part: against, couple: -couple_Nmm })
  }
}

/**
 * Torque or force of a spring at a posture: N·mm counter-clockwise on `on`, or N pulling its two ends together.
 *
 * Torsion: preload + rate × (flexion now − flexion as drawn). Tension pulls once longer than its free length (and has its
 * initial force from there), compression pushes once shorter; neither does the other.
 */
export function springAction(spring: Spring, posture: Float64Array, drawn: Float64Array): number {
  if (spring.kind === 'torsion') {
    const flexion = relativeTurn(drawn, spring) - relativeTurn(posture, spring)
    return spring.preload_Nmm + spring.rate_Nmm_rad * flexion
  }
  const stretch = distance(spring.from, spring.to).value(posture) - spring.freeLength_mm
  if (spring.kind === 'tension') return stretch > 0 ? spring.initial_N + spring.rate_N_mm * stretch : 0
  return stretch < 0 ? spring.rate_N_mm * stretch : 0
}

function relativeTurn(posture: Float64Array, spring: Extract<Spring, { kind: 'torsion' }>): number {
  return posture[3 * spring.on + 2] - posture[3 * spring.against + 2]
}

/** Adds one spring at a posture, its action times a share. */
export function addSpring(row: ForceRow, spring: Spring, drawn: Float64Array, share = 1): void {
  const action = springAction(spring, row.posture, drawn) * share
  if (spring.kind === 'torsion') {
    addCouple(row, { part: spring.on, couple: action })
    addCouple(row, { part: spring.against, couple: -action })
  } else addScaled(row, distance(spring.from, spring.to), -action)
}

/** Adds every spring at a posture, without its own friction. */
export function addSprings(row: ForceRow, drawn: Float64Array): void {
  for (const spring of row.mechanism.design.springs) addSpring(row, spring, drawn)
}

function addScaled(row: ForceRow, condition: Condition, amount: number): void {
  const unit = { ...row, out: new Float64Array(row.mechanism.columns_count), start: 0 }
  condition.addDerivative(unit)
  for (let column = 0; column < unit.out.length; column++) row.out[row.start + column] += amount * unit.out[column]
}

/** All weight pulling along x, and along y, of the mount frame, as generalised forces. */
export interface WeightRows {
  readonly forward: Float64Array
  readonly upward: Float64Array
}

/** Fills in the weight of every part that has a mass. @param at a mechanism with its parts' turns at some posture, wherever that stands */
export function fillWeight(
  { forward, upward }: WeightRows,
  masses: readonly PartMass[],
  { mechanism, partTurns }: ClosureRoom,
): void {
  forward.fill(0)
  upward.fill(0)
  for (const { part, mass_kg, centre } of masses) {
    if (part === 0) continue
    const force_N = mass_kg * GRAVITY_M_S2
    const c = partTurns[2 * part]
    const s = partTurns[2 * part + 1]
    const column = 3 * (part - 1)
    // A part has one mass, so that nothing is written over.
    forward[column] = force_N
    forward[column + 2] = (-force_N * (s * centre.x_mm + c * centre.y_mm)) / mechanism.scale_mm
    upward[column + 1] = force_N
    upward[column + 2] = (force_N * (c * centre.x_mm - s * centre.y_mm)) / mechanism.scale_mm
  }
}

export interface PartMass {
  readonly part: number
  readonly mass_kg: number
  readonly centre: { readonly x_mm: number; readonly y_mm: number }
}
