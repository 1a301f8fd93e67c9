/**
 * Equilibrium at one posture for one port, one load and a given state of friction.
 *
 * With everything but the magnitudes s_j = |R_j| eliminated (see force-frame.ts) one equation a joint is left:
 *
 *     R(s) = R0 + Σ κ_k s_k Y_k        F_j(s) = |R_j(s)| − s_j = 0        λ(s) = λ0 + Σ κ_k s_k ℓ_k
 *
 * solved in magnitudes.ts. A run that does not converge is `undefined`: no equilibrium was found, which is not yet a jam
 * (a jam is the existence of a state of rest, see rest-state.ts).
 *
 * Slots choose their wall by complementarity: assume one, solve, and accept it only when the pin presses on that wall.
 */

import { dot } from '../motion/path.ts'
import { limits } from '../numbers/limits.ts'
import { type ForceFrame, responseTo, type Wall } from './force-frame.ts'
import { type Magnitudes, makeMagnitudes, solveMagnitudes } from './magnitudes.ts'

export interface PortAndLoad {
  /** Generalised force of the unit port. */
  readonly port: Float64Array
  /** Generalised force of all that is given. */
  readonly load: Float64Array
}

/**
 * Fills the signed lever κ (pins, mm) or coefficient κ (slots) of each joint from its rate. A positive κ opposes a positive
 * rate.
 */
export type FillLevers = (rates: Float64Array, out: Float64Array) => void

export interface Balance {
  /** Amplitude λ of the port, in the port's unit. */
  readonly amplitude: number
  /** One entry a closure row: force on b (pins, two components) or along the slot's normal on a. N. */
  readonly forces: Float64Array
  /** |R_j| of each joint, N. */
  readonly magnitudes: Float64Array
  /** κ_j of each joint as used. */
  readonly levers: Float64Array
  /** Power of unit friction of each joint in the motion. */
  readonly rates: Float64Array
}

/** A port and a load prepared at a posture; friction still open. */
export interface Prepared {
  readonly frame: ForceFrame
  readonly portPower: number
  readonly portResponse: Float64Array
  readonly freeAmplitude: number
  readonly freeForces: Float64Array
  readonly room: Magnitudes
  /** Wall that each joint's rubbing is filled in for; pins always +1. */
  readonly walls: Wall[]
  readonly rates: Float64Array
  readonly levers: Float64Array
  readonly slots: readonly number[]
}

/** @returns undefined where the port does no work in the motion: its amplitude then has no meaning (a pole) */
export function prepare(frame: ForceFrame, { port, load }: PortAndLoad): Prepared | undefined {
  const portPower = dot(port, frame.motion)
  if (!(Math.abs(portPower) > limits.workless_ratio * Math.sqrt(dot(port, port)))) return undefined
  const portResponse = responseTo(frame, port)
  const freeForces = responseTo(frame, load)
  const freeAmplitude = -dot(load, frame.motion) / portPower
  for (let row = 0; row < freeForces.length; row++) freeForces[row] = -freeForces[row] - freeAmplitude * portResponse[row]
  const { joints } = frame.mechanism
  const slots = joints.flatMap((joint, index) => (joint.kind === 'slot' ? [index] : []))
  const walls = joints.map((joint): Wall => (joint.kind === 'slot' && freeForces[joint.row] < 0 ? -1 : 1))
  const rates = new Float64Array(joints.length)
  const levers = new Float64Array(joints.length)
  const room = makeMagnitudes(frame.mechanism)
  const prepared = { frame, portPower, portResponse, freeAmplitude, freeForces, room, walls, rates, levers, slots }
  fillFree(prepared)
  fillInfluence(prepared)
  return prepared
}

function fillFree({ frame, freeForces, room }: Prepared): void {
  frame.mechanism.joints.forEach((joint, i) => {
    room.free[2 * i] = freeForces[joint.row]
    room.free[2 * i + 1] = joint.kind === 'pin' ? freeForces[joint.row + 1] : 0
  })
}

/** Influence of each joint's friction on every joint force, for the walls as they are set. */
function fillInfluence(prepared: Prepared): void {
  const { frame, portPower, portResponse, room, walls, rates } = prepared
  const { joints } = frame.mechanism
  const count = joints.length
  for (let k = 0; k < count; k++) {
    const { response, rate } = frame.rubbing(k, walls[k])
    const share = rate / portPower
    rates[k] = rate
    for (let i = 0; i < count; i++) {
      const { row, kind } = joints[i]
      const at = 2 * (i * count + k)
      room.influence[at] = response[row] - share * portResponse[row]
      room.influence[at + 1] = kind === 'pin' ? response[row + 1] - share * portResponse[row + 1] : 0
    }
  }
}

/**
 * Solves a state of friction; afterwards `prepared.room` holds the joint forces.
 *
 * @param start magnitudes to start from, N; left out, the frictionless ones
 * @returns the amplitude, or undefined when no equilibrium was found
 */
export function amplitudeIn(prepared: Prepared, fill: FillLevers, start?: Float64Array): number | undefined {
  if (prepared.slots.length === 0) {
    fill(prepared.rates, prepared.levers)
    return solveMagnitudes(prepared.room, prepared.levers, start) ? amplitudeNow(prepared) : undefined
  }
  for (let trial = 0; trial < limits.wallTrials; trial++) {
    fill(prepared.rates, prepared.levers)
    const solved = solveMagnitudes(prepared.room, prepared.levers, start)
    if (solved && !pressWalls(prepared)) return amplitudeNow(prepared)
    if (!solved) nextWalls(prepared)
    fillInfluence(prepared)
  }
  return undefined
}

/** Sets each slot's wall to the one its pin now presses on. Returns whether any changed. */
function pressWalls({ slots, room, walls }: Prepared): boolean {
  let changed = false
  for (const slot of slots) {
    const wall: Wall = room.forces[2 * slot] < 0 ? -1 : 1
    if (wall !== walls[slot]) changed = true
    walls[slot] = wall
  }
  return changed
}

/** The next combination of walls, counted up in binary over the slots. */
function nextWalls({ slots, walls }: Prepared): void {
  for (const slot of slots) {
    walls[slot] = walls[slot] > 0 ? -1 : 1
    if (walls[slot] < 0) return
  }
}

function amplitudeNow({ freeAmplitude, portPower, levers, rates, room }: Prepared): number {
  let dissipated = 0
  for (let k = 0; k < rates.length; k++) dissipated += levers[k] * room.values[k] * rates[k]
  return freeAmplitude + dissipated / portPower
}

/** Equilibrium in a state of friction with all its forces, or undefined when none was found. */
export function balanceIn(prepared: Prepared, fill: FillLevers, start?: Float64Array): Balance | undefined {
  const amplitude = amplitudeIn(prepared, fill, start)
  if (amplitude === undefined) return undefined
  const { frame, room, levers, rates } = prepared
  const { joints, rows_count } = frame.mechanism
  const forces = new Float64Array(rows_count)
  joints.forEach((joint, i) => {
    forces[joint.row] = room.forces[2 * i]
    if (joint.kind === 'pin') forces[joint.row + 1] = room.forces[2 * i + 1]
  })
  return { amplitude, forces, magnitudes: room.values.slice(), levers: levers.slice(), rates: rates.slice() }
}

/** Every joint's friction against the motion about to start. */
export function againstMotion(levers: Float64Array): FillLevers {
  return (rates, out) => {
    for (let joint = 0; joint < out.length; joint++) out[joint] = rates[joint] < 0 ? -levers[joint] : levers[joint]
  }
}

/** No friction at all. */
export const withoutFriction: FillLevers = (_, out) => {
  out.fill(0)
}
