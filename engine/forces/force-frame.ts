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
 * so one factoring serves every port and load, and the whole problem shrinks to one unknown |R_j| a joint. A mechanism of dyads
 * has S in closed form (dyad-responses.ts); the factors serve the others, and the neighbourhood of a dyad's dead centre. The first
 * equation is virtual work; it gives the amplitude without loss even where pin forces are large. (R is asked of working-free
 * combinations only, so any last row that is not square to v gives the same R.) Turning the motion round changes the
 * sign of rates and powers only; responses are shared.
 */
import { addCouple, addForce, closureDerivative, type ForceRow, slotAngle } from '../motion/closure.ts'
import { type Joint, type Mechanism, placed } from '../motion/mechanism.ts'
import { readPartTurns } from '../motion/part-turns.ts'
import type { PathNode } from '../motion/path.ts'
import { limits } from '../numbers/limits.ts'
import { factor, solveTransposed } from '../numbers/lu.ts'
import { dot } from '../numbers/row.ts'
import { readDyads, respondByDyads } from './dyad-responses.ts'
import type { ForceRoom, Wall } from './force-room.ts'

/** A posture with the motion about to start. Valid until the next frame is made in the same room. */
export interface ForceFrame {
  readonly room: ForceRoom
  readonly mechanism: Mechanism
  readonly posture: Float64Array
  /** Unit closing motion, one entry a column. */
  readonly tangent: Float64Array
  /** +1 closing, −1 opening. */
  readonly sense: 1 | -1
  readonly ticket: number
}

export interface FramePair {
  readonly closing: ForceFrame
  readonly opening: ForceFrame
}

/** @returns undefined where the closure equations do not fix the parts (two ways on) */
export function framesAt(room: ForceRoom, { posture, tangent }: Pick<PathNode, 'posture' | 'tangent'>): FramePair | undefined {
  readPartTurns(posture, room.partTurns)
  return respondsAt(room, posture) || factorWith(room, posture, tangent) ? framePair(room, posture, tangent) : undefined
}

/** Whether the closed form gives the responses at a posture. */
function respondsAt(room: ForceRoom, posture: Float64Array): boolean {
  room.byDyads = room.dyads !== undefined && readDyads(room.dyads, posture, room.partTurns)
  return room.byDyads
}

function factorWith({ mechanism, lu }: ForceRoom, posture: Float64Array, lastRow: Float64Array): boolean {
  closureDerivative(mechanism, posture, lu.factors)
  lu.factors.set(lastRow, mechanism.rows_count * mechanism.columns_count)
  return factor(lu) && lu.pivotRatio >= limits.singular_ratio
}

function framePair(room: ForceRoom, posture: Float64Array, tangent: Float64Array): FramePair {
  const { mechanism } = room
  room.frameTicket++
  room.known.fill(0)
  fillTurns(room, tangent)
  const ticket = room.frameTicket
  return {
    closing: { room, mechanism, posture, tangent, ticket, sense: 1 },
    opening: { room, mechanism, posture, tangent, ticket, sense: -1 },
  }
}

function fillTurns({ mechanism, turns, slow }: ForceRoom, tangent: Float64Array): void {
  const { joints } = mechanism
  let fastest = 0
  for (let index = 0; index < joints.length; index++) {
    turns[index] = turnRate(mechanism, tangent, joints[index].b) - turnRate(mechanism, tangent, joints[index].a)
    fastest = Math.max(fastest, Math.abs(turns[index]))
  }
  for (let index = 0; index < joints.length; index++) {
    slow[index] = joints[index].kind === 'pin' && Math.abs(turns[index]) < limits.slowTurn_ratio * fastest ? 1 : 0
  }
}

function turnRate(mechanism: Mechanism, tangent: Float64Array, part: number): number {
  return part === 0 ? 0 : tangent[3 * (part - 1) + 2] / mechanism.scale_mm
}

function inUse(frame: ForceFrame): ForceRoom {
  if (frame.ticket !== frame.room.frameTicket) throw new Error('force frame: used after the next posture was prepared')
  return frame.room
}

/** Power of a generalised force in the frame's motion, per unit of arc. */
export function powerIn(frame: ForceFrame, generalised: Float64Array): number {
  return frame.sense * dot(generalised, frame.tangent)
}

/** Relative turn θ̇_b − θ̇_a of a joint in the frame's motion, rad per mm of arc. */
export function turnIn(frame: ForceFrame, joint: number): number {
  return frame.sense * inUse(frame).turns[joint]
}

/** 1 for each joint that turns by less than a share of the fastest: its friction may stand on either side. */
export function slowJoints(frame: ForceFrame): Uint8Array {
  return inUse(frame).slow
}

/** Response S(d_j) of unit friction at a joint. Pins rub alike on both sides; slots once for each wall. */
export function rubbingResponse(frame: ForceFrame, joint: number, wall: Wall): Float64Array {
  return inUse(frame).responses[rubbingKey(frame, joint, wall)]
}

/** Power of unit friction of a joint in the frame's motion: relative turn (rad) or slide (mm), per mm of arc. */
export function rubbingRate(frame: ForceFrame, joint: number, wall: Wall): number {
  return frame.sense * inUse(frame).rates[rubbingKey(frame, joint, wall)]
}

function rubbingKey(frame: ForceFrame, index: number, wall: Wall): number {
  const { room, mechanism } = frame
  const joint = mechanism.joints[index]
  const key = joint.kind === 'pin' || wall > 0 ? index : mechanism.joints.length + index
  if (room.known[key] === 1) return key
  const row = passingRow(frame)
  if (joint.kind === 'pin') turnPattern(row, joint)
  else slidePattern(row, joint, wall)
  room.rates[key] = joint.kind === 'pin' ? room.turns[index] : dot(row.out, frame.tangent)
  responseTo(frame, row.out, room.responses[key])
  room.known[key] = 1
  return key
}

/** A generalised force with nothing in it yet; overwritten after some twenty more. */
export function emptyRow(frame: ForceFrame): ForceRow {
  const { room, mechanism, posture } = frame
  const out = room.rows[room.nextRow]
  room.nextRow = (room.nextRow + 1) % room.rows.length
  out.fill(0)
  return { mechanism, posture, out, start: 0 }
}

/** As `emptyRow`, for a force that is taken in before the next one is asked for: there may be any number of springs and joints. */
export function passingRow({ room, mechanism, posture }: ForceFrame): ForceRow {
  room.passing.fill(0)
  return { mechanism, posture, out: room.passing, start: 0 }
}

/** Adds a counter-clockwise couple on b and its reaction on a. */
export function turnPattern(row: ForceRow, joint: Joint, amount = 1): void {
  addCouple(row, { part: joint.b, couple: amount })
  addCouple(row, { part: joint.a, couple: -amount })
}

/** Adds a unit force along a slot on the pin's part, at the pin's centre, and its reaction. */
export function runPattern(row: ForceRow, joint: Joint, amount = 1): void {
  const along = slotAngle(row.posture, joint)
  const force = { x: amount * Math.cos(along), y: amount * Math.sin(along) }
  const at = placed(row.posture, joint.a, joint.atA)
  addForce(row, { part: joint.a, at, force })
  addForce(row, { part: joint.b, at, force: { x: -force.x, y: -force.y } })
}

/** Rate at which a pin's centre runs along its slot in the frame's motion, mm per mm of arc. */
export function runIn(frame: ForceFrame, joint: Joint): number {
  const row = passingRow(frame)
  runPattern(row, joint)
  return powerIn(frame, row.out)
}

/** The pin touches the wall behind it: at its centre less its radius along the force on the pin. */
function slidePattern(row: ForceRow, joint: Joint, wall: Wall): void {
  const along = slotAngle(row.posture, joint)
  const x = Math.cos(along)
  const y = Math.sin(along)
  const pin = placed(row.posture, joint.a, joint.atA)
  const at = { x_mm: pin.x_mm + wall * joint.radius_mm * y, y_mm: pin.y_mm - wall * joint.radius_mm * x }
  addForce(row, { part: joint.a, at, force: { x, y } })
  addForce(row, { part: joint.b, at, force: { x: -x, y: -y } })
}

/** S(g): joint forces that carry a generalised force once its working part is taken out; into `out`, one entry a closure row, N. */
export function responseTo(frame: ForceFrame, generalised: Float64Array, out: Float64Array): void {
  const { dyads, byDyads, lu } = inUse(frame)
  if (dyads && byDyads) respondByDyads(dyads, generalised, out)
  else {
    out.set(generalised)
    solveTransposed(lu, out)
  }
}
