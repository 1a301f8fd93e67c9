/**
 * The small non-linear problem that friction leaves: F_j(s) = |R0_j + Σ κ_k s_k Y_kj| − s_j = 0, one unknown a joint.
 *
 * Newton from a near solution or from s = |R0|, halving a step that does not lower the residual. When it fails, friction is
 * raised from zero in growing shares of κ, each solved from the last; that follows the solution that is connected with the
 * frictionless one. |R| is regularised by 1e-9 of the largest force, so that an unloaded joint has a derivative.
 *
 * Where a port all but does no work a second solution exists, in which the port pushes the other way and only its own friction
 * holds it. It cannot be reached by raising friction from zero: the derivative, −1 for each joint without friction, would have to be
 * singular on the way. So a solution counts only when the determinant of the derivative has kept its sign.
 */

import type { ArrayStock } from '../numbers/array-stock.ts'
import { limits } from '../numbers/limits.ts'
import { determinantSign, factor, type Lu, makeLu, solve } from '../numbers/lu.ts'

export interface Magnitudes {
  readonly count: number
  /** R0, two components a joint. */
  readonly free: Float64Array
  /** Y, two components for each joint and each rubbing joint: index 2 (j count + k). */
  readonly influence: Float64Array
  /** |Y|, one for each pair. */
  readonly sizes: Float64Array
  /** s, the answer. */
  readonly values: Float64Array
  /** R, two components a joint, at the answer. */
  readonly forces: Float64Array
  readonly residual: Float64Array
  readonly step: Float64Array
  readonly kept: Float64Array
  readonly lu: Lu
}

/** Empty memory for a number of joints. */
export function makeMagnitudes(count: number, numbers: ArrayStock): Magnitudes {
  return {
    count,
    free: numbers(2 * count),
    influence: numbers(2 * count * count),
    sizes: numbers(count * count),
    values: numbers(count),
    forces: numbers(2 * count),
    residual: numbers(count),
    step: numbers(count),
    kept: numbers(count),
    lu: makeLu(count),
  }
}

/** Solves for the signed levers κ; the answer stands in `room`. Returns false when nothing was found. */
export function solveMagnitudes(room: Magnitudes, levers: Float64Array, start?: Float64Array): boolean {
  if (start) {
    room.values.set(start)
    if (newton(room, levers)) return true
  }
  startFree(room)
  return newton(room, levers) || raisedFromZero(room, levers)
}

function startFree({ count, free, values }: Magnitudes): void {
  for (let j = 0; j < count; j++) values[j] = Math.sqrt(free[2 * j] * free[2 * j] + free[2 * j + 1] * free[2 * j + 1])
}

function raisedFromZero(room: Magnitudes, levers: Float64Array): boolean {
  startFree(room)
  let reached = 0
  let step = 0.5
  for (let trial = 0; trial < limits.frictionRaises; trial++) {
    const share = Math.min(1, reached + step)
    const before = room.values.slice()
    const solved = newton(
      room,
      levers.map((lever) => share * lever),
    )
    if (solved && share === 1) return true
    if (!solved) room.values.set(before)
    reached = solved ? share : reached
    step = solved ? 2 * step : step / 2
    if (step < limits.frictionRaiseLeast_ratio) return false
  }
  return false
}

/** Newton with its derivative kept for as long as that serves: far from a jam the first one does for the whole solution. */
function newton(room: Magnitudes, levers: Float64Array): boolean {
  const { values, kept } = room
  const connected = room.count % 2 === 0 ? 1 : -1
  let sign: number = connected
  let isFresh = false
  let serves = false
  let last = residualNow(room, levers)
  for (let round = 0; round < limits.frictionRounds; round++) {
    const scale = largest(values)
    if (last <= limits.frictionTolerance_ratio * scale || scale === 0) return sign === connected
    if (!serves) {
      fillDerivative(room, levers, scale)
      if (!factor(room.lu)) return false
      sign = determinantSign(room.lu)
    }
    isFresh = !serves
    const next = stepped(room, levers, { last, halvings: isFresh ? limits.frictionHalvings : 1 })
    if (next < last) {
      serves = next <= limits.keptDerivative_ratio * last
      last = next
      continue
    }
    values.set(kept)
    residualNow(room, levers)
    if (isFresh) return sign === connected && last <= limits.frictionRounding_ratio * scale
    serves = false
  }
  return false
}

/** One step by the factors in the room, halved until it lowers the residual. Returns the residual after it. */
function stepped(room: Magnitudes, levers: Float64Array, { last, halvings }: { last: number; halvings: number }): number {
  const { values, step, kept, count } = room
  for (let j = 0; j < count; j++) {
    step[j] = room.residual[j]
    kept[j] = values[j]
  }
  solve(room.lu, step)
  let next = Number.POSITIVE_INFINITY
  let share = 1
  for (let halving = 0; halving < halvings && !(next < last); halving++, share /= 2) {
    for (let j = 0; j < count; j++) values[j] = kept[j] - share * step[j]
    next = residualNow(room, levers)
  }
  return next
}

function largest(values: Float64Array): number {
  let most = 0
  for (let j = 0; j < values.length; j++) {
    const size = Math.abs(values[j])
    if (size > most) most = size
  }
  return most
}

/** Fills `residual` and `forces` at the present values; returns the largest residual. */
function residualNow(room: Magnitudes, levers: Float64Array): number {
  const { count, free, influence, forces, residual, values } = room
  let most = 0
  for (let j = 0; j < count; j++) {
    let x = free[2 * j]
    let y = free[2 * j + 1]
    for (let k = 0, at = 2 * j * count; k < count; k++, at += 2) {
      const friction = levers[k] * values[k]
      x += friction * influence[at]
      y += friction * influence[at + 1]
    }
    forces[2 * j] = x
    forces[2 * j + 1] = y
    const gap = Math.sqrt(x * x + y * y) - values[j]
    residual[j] = gap
    if (!(Math.abs(gap) <= most)) most = Math.abs(gap)
  }
  return most
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
