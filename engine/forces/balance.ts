/**
 * Equilibrium at one posture for one port, one load and a given state of friction.
 *
 * Three ways to the joint forces R_j. Where links carry nothing, two-force.ts gives them in closed form; where the mechanism comes
 * apart into dyads, dyad-friction.ts takes them one by one; both step back where their answer would not be the only one. Otherwise, with
 * everything but the magnitudes s_j = |R_j| eliminated (force-frame.ts), one equation a joint is left, solved in general-way.ts:
 *
 *     R(s) = R0 + Σ κ_k s_k Y_k        F_j(s) = |R_j(s)| − s_j = 0
 *
 * In every way the amplitude comes from the work of friction, λ = λ0 + Σ κ_k s_k ℓ_k. A run that does not converge is
 * `undefined`: no equilibrium was found, which is not yet a jam (a jam is the existence of a state of rest, see rest-state.ts).
 */
import { copied } from '../numbers/array-stock.ts'
import { limits } from '../numbers/limits.ts'
import { solveByDyads } from './dyad-friction.ts'
import type { DyadRoom } from './dyad-responses.ts'
import { type ForceFrame, powerIn, turnIn } from './force-frame.ts'
import { type FillLevers, type ForceQuestion, fillGeneral, inUse, type PortAndLoad, solveGeneral } from './general-way.ts'
import { solveTwoForce } from './two-force.ts'
import type { TwoForcePlan } from './two-force-plan.ts'
import { planFor } from './two-force-room.ts'

export type { FillLevers, PortAndLoad }

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

/** A port and a load prepared at a posture, friction still open. Valid until the next is prepared in the same room. */
export interface Prepared extends ForceQuestion {
  /** How to take the parts off one by one; undefined where only the general way serves. */
  readonly plan: TwoForcePlan | undefined
  /** The dyads that the mechanism comes apart into; undefined where it does not at this posture. */
  readonly dyads: DyadRoom | undefined
}

/** @returns undefined where the port does no work in the motion: its amplitude then has no meaning (a pole) */
export function prepare(frame: ForceFrame, { port, load }: PortAndLoad): Prepared | undefined {
  const { room, mechanism } = frame
  const portPower = powerIn(frame, port)
  let size = 0
  for (let column = 0; column < port.length; column++) size += port[column] * port[column]
  if (!(Math.abs(portPower) > limits.workless_ratio * Math.sqrt(size))) return undefined
  const prepared: Prepared = {
    frame,
    room,
    portPower,
    freeAmplitude: -powerIn(frame, load) / portPower,
    plan: planFor(room.twoForce, { load, port }),
    dyads: room.byDyads ? room.dyads : undefined,
    ticket: ++room.questionTicket,
  }
  if (!prepared.plan && !prepared.dyads) fillGeneral(prepared)
  else for (let joint = 0; joint < mechanism.joints.length; joint++) room.questionRates[joint] = turnIn(frame, joint)
  return prepared
}

/** The same question with both shorter ways left out: the plain way that they are compared with. */
export function generalWay(prepared: Prepared): Prepared {
  return { ...prepared, plan: undefined, dyads: undefined }
}

/** Whether a question is still the one that stands in its room. */
export function isPrepared({ room, ticket }: Prepared): boolean {
  return ticket === room.questionTicket
}

/**
 * Solves a state of friction; afterwards the room holds the joint forces.
 *
 * @param start magnitudes to start from, N; left out, the frictionless ones
 * @returns the amplitude, or undefined when no equilibrium was found
 */
export function amplitudeIn(prepared: Prepared, fill: FillLevers, start?: Float64Array): number | undefined {
  const closed = amplitudeInClosedForm(prepared, fill) ?? amplitudeByDyads(prepared, fill)
  if (closed !== undefined) return closed
  return solveGeneral(prepared, fill, start) ? amplitudeNow(prepared) : undefined
}

/**
 * As `amplitudeIn`, by the closed form alone.
 *
 * @returns undefined where the general way has to decide. An answer is the only one there is, and changes continuously as friction
 *          is raised from nothing
 */
export function amplitudeInClosedForm(prepared: Prepared, fill: FillLevers): number | undefined {
  const { magnitudes, levers, questionRates } = inUse(prepared)
  if (!prepared.plan) return undefined
  fill(questionRates, levers)
  return solveTwoForce(prepared.frame, prepared.plan, { levers, out: magnitudes }) ? amplitudeNow(prepared) : undefined
}

/** As `amplitudeIn`, dyad by dyad alone. @returns undefined where the general way has to decide */
export function amplitudeByDyads(prepared: Prepared, fill: FillLevers): number | undefined {
  const { magnitudes, levers, questionRates, twoForce } = inUse(prepared)
  if (!prepared.dyads) return undefined
  fill(questionRates, levers)
  return solveByDyads(prepared.dyads, twoForce, { levers, out: magnitudes }) ? amplitudeNow(prepared) : undefined
}

function amplitudeNow({ freeAmplitude, portPower, room }: Prepared): number {
  const { levers, questionRates, magnitudes } = room
  let dissipated = 0
  for (let k = 0; k < levers.length; k++) dissipated += levers[k] * magnitudes.values[k] * questionRates[k]
  return freeAmplitude + dissipated / portPower
}

/** Equilibrium in a state of friction with all its forces, or undefined when none was found. */
export function balanceIn(prepared: Prepared, fill: FillLevers, start?: Float64Array): Balance | undefined {
  const amplitude = amplitudeIn(prepared, fill, start)
  return amplitude === undefined ? undefined : balanceNow(prepared, amplitude)
}

/** The state that was solved last, taken out of the room. */
export function balanceNow(prepared: Prepared, amplitude: number): Balance {
  const { magnitudes, levers, questionRates: rates, stock } = inUse(prepared)
  const { joints, rows_count } = prepared.frame.mechanism
  const forces = stock(rows_count)
  joints.forEach((joint, i) => {
    forces[joint.row] = magnitudes.forces[2 * i]
    if (joint.kind === 'pin') forces[joint.row + 1] = magnitudes.forces[2 * i + 1]
  })
  const kept = (values: Float64Array): Float64Array => copied(stock, values)
  return { amplitude, forces, magnitudes: kept(magnitudes.values), levers: kept(levers), rates: kept(rates) }
}

/** Joint forces of the state that was solved last, two numbers a joint: on its part b (pins), or along the slot's normal on a and 0. N. */
export function jointForcesNow(prepared: Prepared): Float64Array {
  const { magnitudes, stock } = inUse(prepared)
  return copied(stock, magnitudes.forces)
}

/** Largest joint force of the state that was solved last, N. */
export function largestForceNow(prepared: Prepared): number {
  const { values } = inUse(prepared).magnitudes
  let most = 0
  for (let joint = 0; joint < values.length; joint++) most = Math.max(most, values[joint])
  return most
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
