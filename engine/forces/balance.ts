/**
 * Equilibrium at one posture for one port, one load and a given state of friction.
 *
 * With everything but the magnitudes s_j = |R_j| eliminated (see force-frame.ts) one equation a joint is left:
 *
 *     R(s) = R0 + Σ κ_k s_k Y_k        F_j(s) = |R_j(s)| − s_j = 0        λ(s) = λ0 + Σ κ_k s_k ℓ_k
 *
 * solved by Newton from the frictionless state with damping; when that fails friction is raised from zero in halves. A run
 * that does not converge is `undefined`: no equilibrium was found, which is not yet a jam (a jam is the existence of a state
 * of rest, see rest-state.ts). |R| is regularised by 1e-9 of the largest force, so that an unloaded joint has a derivative.
 */
import { limits } from '../numbers/limits.ts'
import { dot } from '../motion/path.ts'
import { type ForceFrame, responseTo, type Rubbing, type Wall } from './force-frame.ts'
import { makeMagnitudes, type Magnitudes, solveMagnitudes } from './magnitudes.ts'

export interface PortAndLoad {
  /** Generalised force of the unit port. */
  readonly port: Float64Array
  /** Generalised force of all that is given. */
  readonly load: Float64Array
}

/** Friction lever κ (pins, mm) or coefficient κ (slots), signed: positive opposes a positive rate of the joint. */
export type Levers = (joint: number, rate: number) => number

export interface Balance {
  /** Amplitude λ of the port, in the port's unit. */
  readonly amplitude: number
  /** One entry a closure row: force on b (pins, two components) or along the slot's normal on a. N. */
  readonly forces: Float64Array
  /** |R_j| of each joint, N. */
  readonly magnitudes: Float64Array
  /** κ_j of each joint as used. */
  readonly levers: Float64Array
  readonly walls: readonly Wall[]
}

/** A port and a load prepared at a posture; friction still open. */
export interface Prepared {
  readonly frame: ForceFrame
  readonly portPower: number
  readonly portResponse: Float64Array
  readonly freeAmplitude: number
  readonly freeForces: Float64Array
  readonly magnitudes: Magnitudes
}

/** @returns undefined where the port does no work in the motion: its amplitude then has no meaning (a pole) */
export function prepare(frame: ForceFrame, { port, load }: PortAndLoad): Prepared | undefined {
  const portPower = dot(port, frame.motion)
  if (!(Math.abs(portPower) > limits.workless_ratio * Math.sqrt(dot(port, port)))) return undefined
  const portResponse = responseTo(frame, port)
  const loadResponse = responseTo(frame, load)
  const freeAmplitude = -dot(load, frame.motion) / portPower
  const freeForces = loadResponse.map((force, row) => -force - freeAmplitude * portResponse[row])
  return { frame, portPower, portResponse, freeAmplitude, freeForces, magnitudes: makeMagnitudes(frame.mechanism) }
}

/** Equilibrium in a state of friction, or undefined when none was found. */
export function balanceIn(prepared: Prepared, levers: Levers): Balance | undefined {
  const { joints } = prepared.frame.mechanism
  let walls: Wall[] = joints.map((joint) => (joint.kind === 'slot' && prepared.freeForces[joint.row] < 0 ? -1 : 1))
  const tried = new Set<string>()
  for (let trial = 0; trial < limits.wallTrials; trial++) {
    const balance = balanceOnWalls(prepared, levers, walls)
    const wanted = balance ? wallsOf(prepared, balance.forces) : nextWalls(joints, walls)
    if (balance && wanted.every((wall, index) => wall === walls[index])) return balance
    tried.add(walls.join())
    if (tried.has(wanted.join())) return undefined
    walls = wanted
  }
  return undefined
}

function wallsOf(prepared: Prepared, forces: Float64Array): Wall[] {
  return prepared.frame.mechanism.joints.map((joint) => (joint.kind === 'slot' && forces[joint.row] < 0 ? -1 : 1))
}

/** The next combination of walls, counted up in binary over the slots. */
function nextWalls(joints: Prepared['frame']['mechanism']['joints'], walls: readonly Wall[]): Wall[] {
  const next = [...walls]
  for (let index = 0; index < next.length; index++) {
    if (joints[index].kind !== 'slot') continue
    next[index] = next[index] > 0 ? -1 : 1
    if (next[index] < 0) break
  }
  return next
}

function balanceOnWalls(prepared: Prepared, leverOf: Levers, walls: readonly Wall[]): Balance | undefined {
  const { frame, magnitudes: room } = prepared
  const { joints } = frame.mechanism
  const rubbings: Rubbing[] = joints.map((_, index) => frame.rubbing(index, walls[index]))
  const levers = Float64Array.from(rubbings, (rubbing, index) => leverOf(index, rubbing.rate))
  fillInfluence(prepared, rubbings)
  if (!solveMagnitudes(room, levers)) return undefined
  return gather(prepared, rubbings, levers, walls)
}

function fillInfluence(prepared: Prepared, rubbings: readonly Rubbing[]): void {
  const { portPower, portResponse, freeForces, magnitudes: room } = prepared
  const count = rubbings.length
  rubbings.forEach((to, i) => {
    const { row, kind } = to.joint
    const wide = kind === 'pin'
    room.free[2 * i] = freeForces[row]
    room.free[2 * i + 1] = wide ? freeForces[row + 1] : 0
    for (let k = 0; k < count; k++) {
      const { response, rate } = rubbings[k]
      const share = rate / portPower
      room.influence[2 * (i * count + k)] = response[row] - share * portResponse[row]
      room.influence[2 * (i * count + k) + 1] = wide ? response[row + 1] - share * portResponse[row + 1] : 0
    }
  })
}

function gather(prepared: Prepared, rubbings: readonly Rubbing[], levers: Float64Array, walls: readonly Wall[]): Balance {
  const { portPower, portResponse, freeForces, freeAmplitude, magnitudes: room } = prepared
  const forces = Float64Array.from(freeForces)
  let amplitude = freeAmplitude
  rubbings.forEach(({ response, rate }, k) => {
    const friction = levers[k] * room.values[k]
    const share = rate / portPower
    amplitude += friction * share
    if (friction !== 0) for (let row = 0; row < forces.length; row++) forces[row] += friction * (response[row] - share * portResponse[row])
  })
  return { amplitude, forces, magnitudes: Float64Array.from(room.values), levers, walls }
}
