/**
 * One posture prepared for any number of force questions.
 *
 * Equilibrium of every moving part, in generalised forces (three columns a part), with C the closure derivative:
 *
 *     Cᵀ R + λ p + Q − Σ κ_j |R_j| d_j = 0
 *
 * R joint forces, p the port's pattern with amplitude λ, Q the loads, d_j the friction pattern of joint j (unit couple on b and
 * its reaction on a; in a slot the unit sliding force at the contact). With v the unit motion (C v = 0) the square matrix
 * B = [C; v] is never singular on the path, and
 *
 *     λ = (v·g) / (v·p),   R = S(g − λ p),   S(g) = the first rows of B⁻ᵀ g,   g = −Q + Σ κ_j |R_j| d_j
 *
 * so one factoring serves every port and load, and the whole problem shrinks to one unknown |R_j| a joint. The first
 * equation is virtual work; it gives the amplitude without loss even where pin forces are large.
 */

import { addCouple, addForce, closureDerivative, type ForceRow, slotAngle } from '../motion/closure.ts'
import { type Joint, type Mechanism, placed } from '../motion/mechanism.ts'
import { dot } from '../motion/path.ts'
import { factor, type Lu, makeLu, solveTransposed } from '../numbers/lu.ts'
import type { Vector } from '../numbers/vector.ts'

/** Which wall of a slot the pin pushes on: +1 when the force on the pin is along the slot's normal. */
export type Wall = 1 | -1

/** How one joint rubs at this posture. */
export interface Rubbing {
  readonly joint: Joint
  /** Generalised force of unit friction. */
  readonly pattern: Float64Array
  /** Its response S(pattern). */
  readonly response: Float64Array
  /** Power of the pattern in the motion: relative turn (rad per mm of arc) or slide (mm per mm of arc). */
  readonly rate: number
}

export interface ForceFrame {
  readonly mechanism: Mechanism
  readonly posture: Float64Array
  /** Unit motion about to start, one entry a column. */
  readonly motion: Float64Array
  readonly lu: Lu
  /** Relative turn θ̇_b − θ̇_a of each joint, rad per mm of arc. */
  readonly turns: Float64Array
  /** Pins rub alike on both sides; slots once for each wall. */
  readonly rubbing: (joint: number, wall: Wall) => Rubbing
}

/** @returns undefined where the closure equations do not fix the parts (two ways on) */
export function forceFrame(mechanism: Mechanism, posture: Float64Array, motion: Float64Array): ForceFrame | undefined {
  const lu = makeLu(mechanism.columns_count)
  closureDerivative(mechanism, posture, lu.factors)
  lu.factors.set(motion, mechanism.rows_count * mechanism.columns_count)
  if (!factor(lu)) return undefined
  const turns = Float64Array.from(
    mechanism.joints,
    (joint) => turnRate(mechanism, motion, joint.b) - turnRate(mechanism, motion, joint.a),
  )
  const known: (Rubbing | undefined)[] = new Array(2 * mechanism.joints.length)
  const rubbing = (index: number, wall: Wall): Rubbing => {
    const key = mechanism.joints[index].kind === 'pin' || wall > 0 ? index : mechanism.joints.length + index
    known[key] ??= rubbingOf({ mechanism, posture, motion, lu }, mechanism.joints[index], wall)
    return known[key]
  }
  return { mechanism, posture, motion, lu, turns, rubbing }
}

/** The same posture with the motion turned round: responses are shared, rates change sign. */
export function oppositeFrame(frame: ForceFrame): ForceFrame {
  const rubbing = (joint: number, wall: Wall): Rubbing => {
    const known = frame.rubbing(joint, wall)
    return { ...known, rate: -known.rate }
  }
  const minus = (values: Float64Array): Float64Array => values.map((value) => -value)
  return { ...frame, motion: minus(frame.motion), turns: minus(frame.turns), rubbing }
}

function turnRate(mechanism: Mechanism, motion: Float64Array, part: number): number {
  return part === 0 ? 0 : motion[3 * (part - 1) + 2] / mechanism.scale_mm
}

type Prepared = Pick<ForceFrame, 'mechanism' | 'posture' | 'motion' | 'lu'>

function rubbingOf(frame: Prepared, joint: Joint, wall: Wall): Rubbing {
  const row = emptyRow(frame)
  if (joint.kind === 'pin') turnPattern(row, joint)
  else slidePattern(row, joint, wall)
  return { joint, pattern: row.out, response: responseTo(frame, row.out), rate: dot(row.out, frame.motion) }
}

/** A generalised force with nothing in it yet. */
export function emptyRow(frame: Pick<ForceFrame, 'mechanism' | 'posture'>): ForceRow {
  return { mechanism: frame.mechanism, posture: frame.posture, out: new Float64Array(frame.mechanism.columns_count), start: 0 }
}

/** Adds a unit counter-clockwise couple on b and its reaction on a. */
export function turnPattern(row: ForceRow, joint: Joint, amount = 1): void {
  addCouple(row, { part: joint.b, couple: amount })
  addCouple(row, { part: joint.a, couple: -amount })
}

/** The pin touches the wall behind it: at its centre less its radius along the force on the pin. */
function slidePattern(row: ForceRow, joint: Joint, wall: Wall): void {
  const along = slotAngle(row.posture, joint)
  const direction: Vector = { x: Math.cos(along), y: Math.sin(along) }
  const pin = placed(row.posture, joint.a, joint.atA)
  const at = {
    x_mm: pin.x_mm + wall * joint.radius_mm * Math.sin(along),
    y_mm: pin.y_mm - wall * joint.radius_mm * Math.cos(along),
  }
  addForce(row, { part: joint.a, at, force: direction })
  addForce(row, { part: joint.b, at, force: { x: -direction.x, y: -direction.y } })
}

/** S(g): joint forces that carry a generalised force once its working part is taken out. One entry a closure row, N. */
export function responseTo(frame: Pick<ForceFrame, 'lu' | 'mechanism'>, generalised: Float64Array): Float64Array {
  const out = Float64Array.from(generalised)
  solveTransposed(frame.lu, out)
  return out.subarray(0, frame.mechanism.rows_count)
}
