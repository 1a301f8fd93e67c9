/**
 * The small non-linear problem that friction leaves: F_j(s) = |R0_j + Σ κ_k s_k Y_kj| − s_j = 0, one unknown a joint.
 *
 * Newton from s = |R0|, halving a step that does not lower the residual. When it fails, friction is raised from zero in
 * growing shares of κ, each solved from the last; that follows the solution that is connected with the frictionless one.
 */
import { limits } from '../numbers/limits.ts'
import { factor, type Lu, makeLu, solve } from '../numbers/lu.ts'
import type { Mechanism } from '../motion/mechanism.ts'

export interface Magnitudes {
  readonly count: number
  /** R0, two components a joint. */
  readonly free: Float64Array
  /** Y, two components for each joint and each rubbing joint: index 2 (j count + k). */
  readonly influence: Float64Array
  /** s, the answer. */
  readonly values: Float64Array
  /** R, two components a joint, at the answer. */
  readonly forces: Float64Array
  readonly residual: Float64Array
  readonly trial: Float64Array
  readonly scaled: Float64Array
  readonly lu: Lu
}

export function makeMagnitudes(mechanism: Mechanism): Magnitudes {
  const count = mechanism.joints.length
  return {
    count,
    free: new Float64Array(2 * count),
    influence: new Float64Array(2 * count * count),
    values: new Float64Array(count),
    forces: new Float64Array(2 * count),
    residual: new Float64Array(count),
    trial: new Float64Array(count),
    scaled: new Float64Array(count),
    lu: makeLu(count),
  }
}

/** Solves for the signed levers κ; the answer stands in `room.values`. Returns false when nothing was found. */
export function solveMagnitudes(room: Magnitudes, levers: Float64Array): boolean {
  startFree(room)
  if (newton(room, levers)) return true
  startFree(room)
  let reached = 0
  let step = 0.5
  for (let trial = 0; trial < limits.frictionRaises; trial++) {
    const share = Math.min(1, reached + step)
    room.scaled.set(levers)
    for (let k = 0; k < room.count; k++) room.scaled[k] *= share
    const kept = Float64Array.from(room.values)
    if (newton(room, room.scaled)) {
      if (share === 1) return true
      reached = share
      step *= 2
    } else {
      room.values.set(kept)
      step /= 2
    }
  }
  return false
}

function startFree(room: Magnitudes): void {
  for (let j = 0; j < room.count; j++) room.values[j] = Math.hypot(room.free[2 * j], room.free[2 * j + 1])
}

function newton(room: Magnitudes, levers: Float64Array): boolean {
  const { values, trial, residual, count } = room
  let last = residualAt(room, levers, values)
  for (let round = 0; round < limits.frictionRounds; round++) {
    const scale = largest(values)
    if (last <= limits.frictionTolerance_ratio * scale || scale === 0) return true
    if (!newtonStep(room, levers, scale)) return false
    let share = 1
    let next = Number.POSITIVE_INFINITY
    for (let halving = 0; halving < limits.frictionHalvings; halving++, share /= 2) {
      for (let j = 0; j < count; j++) trial[j] = values[j] - share * residual[j]
      next = residualOnly(room, levers, trial)
      if (next < last) break
    }
    if (!(next < last)) return last <= limits.frictionRounding_ratio * scale
    values.set(trial)
    last = residualAt(room, levers, values)
  }
  return false
}

function largest(values: Float64Array): number {
  let most = 0
  for (const value of values) if (Math.abs(value) > most) most = Math.abs(value)
  return most
}

/** Fills `residual` and `forces` at s; returns the largest residual. */
function residualAt(room: Magnitudes, levers: Float64Array, s: Float64Array): number {
  const { count, free, influence, forces, residual } = room
  let most = 0
  for (let j = 0; j < count; j++) {
    let x = free[2 * j]
    let y = free[2 * j + 1]
    for (let k = 0; k < count; k++) {
      const friction = levers[k] * s[k]
      const at = 2 * (j * count + k)
      x += friction * influence[at]
      y += friction * influence[at + 1]
    }
    forces[2 * j] = x
    forces[2 * j + 1] = y
    const gap = Math.sqrt(x * x + y * y) - s[j]
    residual[j] = gap
    if (!(Math.abs(gap) <= most)) most = Math.abs(gap)
  }
  return most
}

function residualOnly(room: Magnitudes, levers: Float64Array, s: Float64Array): number {
  const kept = Float64Array.from(room.residual)
  const most = residualAt(room, levers, s)
  room.residual.set(kept)
  return most
}

/** Derivative of the residual, regularised; then the Newton step stands in `residual`. */
function newtonStep(room: Magnitudes, levers: Float64Array, scale: number): boolean {
  fillDerivative(room, levers, scale)
  if (!factor(room.lu)) return false
  solve(room.lu, room.residual)
  return true
}

/** ∂F_j/∂s_k = κ_k R_j·Y_kj / |R_j| − δ_jk into `room.lu`, not yet factored. */
export function fillDerivative(room: Magnitudes, levers: Float64Array, scale: number): void {
  const { count, influence, forces, lu } = room
  const least = limits.unloaded_ratio * scale
  for (let j = 0; j < count; j++) {
    const x = forces[2 * j]
    const y = forces[2 * j + 1]
    const inverse = 1 / Math.sqrt(x * x + y * y + least * least)
    for (let k = 0; k < count; k++) {
      const at = 2 * (j * count + k)
      lu.factors[j * count + k] = levers[k] * (x * influence[at] + y * influence[at + 1]) * inverse - (j === k ? 1 : 0)
    }
  }
}
