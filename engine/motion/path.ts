/**
 * The one-freedom path of a finger, followed by arc length.
 *
 * At dead centre the drive stands still and turns back, so the drive cannot be the parameter. The path's own arc can:
 *
 *      ●──t──▶ ○ predicted = posture + h t        t: unit tangent, closure derivative · t = 0
 *              │ corrected by Newton on the closure equations and on the plane through ○ normal to t
 *              ● next posture                     sense kept by t_next · t > 0
 *
 * (Keller's pseudo-arclength continuation, from memory.) The arc is counted in mm with angles times the mechanism's scale.
 * The branch is never jumped: a step is halved when Newton needs more than four rounds, when its first correction is large
 * against the step, or when the tangent turns by more than about 20°. At a place where two ways go on the factors become
 * singular, and the march ends there and says so.
 */
import { limits } from '../numbers/limits.ts'
import { factor, type Lu, makeLu, solve } from '../numbers/lu.ts'
import { closureDerivative, type ForceRow } from './closure.ts'
import type { Condition } from './condition.ts'
import type { Mechanism } from './mechanism.ts'
import { type Bench, makeBench, settle } from './settle.ts'

export interface PathNode {
  readonly posture: Float64Array
  /** Unit, one entry a column (angles times scale). */
  readonly tangent: Float64Array
  /** mm from the first node. */
  readonly arc_mm: number
}

export interface PathBench extends Bench {
  readonly tangentLu: Lu
}

export function makePathBench(mechanism: Mechanism): PathBench {
  return { ...makeBench(mechanism), tangentLu: makeLu(mechanism.columns_count) }
}

/** Derivative of a condition at a posture as a fresh generalised force. */
export function derivativeOf(mechanism: Mechanism, posture: Float64Array, condition: Condition): Float64Array {
  const row: ForceRow = { mechanism, posture, out: new Float64Array(mechanism.columns_count), start: 0 }
  condition.addDerivative(row)
  return row.out
}

/**
 * Unit tangent of the path with positive part along `along`.
 *
 * @returns undefined where the closure equations leave more than one way, or where `along` is square to the path
 */
export function tangentAt(bench: PathBench, posture: Float64Array, along: Float64Array): Float64Array | undefined {
  const { mechanism, tangentLu: lu } = bench
  closureDerivative(mechanism, posture, lu.factors)
  lu.factors.set(along, mechanism.rows_count * mechanism.columns_count)
  if (!factor(lu) || lu.pivotRatio < limits.singular_ratio) return undefined
  const tangent = new Float64Array(mechanism.columns_count)
  tangent[mechanism.rows_count] = 1
  solve(lu, tangent)
  return normalised(tangent)
}

function normalised(values: Float64Array): Float64Array {
  const length = Math.sqrt(dot(values, values))
  return values.map((value) => value / length)
}

export function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0
  for (let i = 0; i < a.length; i++) sum += a[i] * b[i]
  return sum
}

/** Arc over which no part turns by more than `limits.marchTurn_rad`, mm. */
export function marchLength(mechanism: Mechanism, tangent: Float64Array): number {
  let turning = 0
  let largest = 0
  tangent.forEach((value, column) => {
    largest = Math.max(largest, Math.abs(value))
    if (column % 3 === 2) turning = Math.max(turning, Math.abs(value))
  })
  const rate = Math.max(turning, largest * limits.slowestTurn_ratio)
  return (limits.marchTurn_rad * mechanism.scale_mm) / rate
}

/** Posture on the plane `step_mm` ahead of a node (behind when negative), or undefined when Newton does not reach it. */
export function postureAhead(bench: PathBench, node: PathNode, step_mm: number): ReturnType<typeof settle> {
  const predicted = advanced(bench.mechanism, node, step_mm)
  return settle(bench, predicted, planeThrough(bench.mechanism, predicted, node.tangent))
}

function advanced(mechanism: Mechanism, node: PathNode, step_mm: number): Float64Array {
  const posture = Float64Array.from(node.posture)
  node.tangent.forEach((value, column) => {
    posture[column + 3] += (column % 3 === 2 ? value / mechanism.scale_mm : value) * step_mm
  })
  return posture
}

function planeThrough(mechanism: Mechanism, point: Float64Array, normal: Float64Array): Condition {
  return {
    value: (posture) => {
      let sum = 0
      for (let column = 0; column < normal.length; column++) {
        const away = posture[column + 3] - point[column + 3]
        sum += normal[column] * (column % 3 === 2 ? away * mechanism.scale_mm : away)
      }
      return sum
    },
    addDerivative: (row) => {
      for (let column = 0; column < normal.length; column++) row.out[row.start + column] += normal[column]
    },
  }
}

/** The next node, at most `step_mm` further, halving as needed; undefined where the march cannot go on. */
export function march(bench: PathBench, node: PathNode, step_mm: number): PathNode | undefined {
  let step = step_mm
  for (let halving = 0; halving < limits.marchHalvings; halving++, step /= 2) {
    const next = postureAhead(bench, node, step)
    if (!next || next.rounds > limits.marchRounds || next.firstStep_mm > limits.marchCorrection_ratio * Math.abs(step)) continue
    const tangent = tangentAt(bench, next.posture, node.tangent)
    if (!tangent || dot(tangent, node.tangent) < limits.marchStraightness_ratio) continue
    return { posture: next.posture, tangent, arc_mm: node.arc_mm + step }
  }
  return undefined
}

/** The same node looking the other way. */
export function reversed(node: PathNode): PathNode {
  return { ...node, tangent: node.tangent.map((value) => -value) }
}
