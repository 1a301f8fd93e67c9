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
 * The branch is never jumped: a step is halved when Newton needs more than a few rounds, when its first correction is large
 * against the step, when the tangent turns by more than about 20°, or when the orientation of the path changes over it. Where
 * two ways go on, halving runs into that place and the march ends there and says so.
 */

import { limits } from '../numbers/limits.ts'
import { factor, type Lu, makeLu, solve } from '../numbers/lu.ts'
import { dot } from '../numbers/row.ts'
import { closedAhead } from './closed-ahead.ts'
import { closureDerivative, type ForceRow } from './closure.ts'
import type { Condition } from './condition.ts'
import type { Mechanism } from './mechanism.ts'
import { sameOrientation } from './orientation.ts'
import { readParts } from './place-parts.ts'
import { makePlan, type Plan } from './plan.ts'
import { ratesOf } from './plan-rates.ts'
import { makePlanRoom, type PlanRoom } from './plan-room.ts'
import { type Bench, makeBench, type Settled, settleWithin } from './settle.ts'

export interface PathNode {
  readonly posture: Float64Array
  /** Unit, one entry a column (angles times scale). */
  readonly tangent: Float64Array
  /** mm from the first node. */
  readonly arc_mm: number
}

/** Room for the path of one mechanism; one a caller, never shared between two that run at once. */
export interface PathBench extends Bench {
  readonly tangentLu: Lu
  readonly plan: Plan
  /** Present where the plan places every part. */
  readonly planRoom: PlanRoom | undefined
  readonly predicted: Float64Array
  readonly rates: Float64Array
}

/** @param roads `newton` leaves the closed forms out, for comparing the two */
export function makePathBench(mechanism: Mechanism, roads: 'both' | 'newton' = 'both'): PathBench {
  const plan = makePlan(mechanism)
  const planRoom = roads === 'both' && plan.leftover.length === 0 ? makePlanRoom(plan) : undefined
  const posture_size = 3 * mechanism.parts_count
  const room = { predicted: new Float64Array(posture_size), rates: new Float64Array(posture_size) }
  return { ...makeBench(mechanism), tangentLu: makeLu(mechanism.columns_count), plan, planRoom, ...room }
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
  return closedTangent(bench, posture, along) ?? denseTangent(bench, posture, along)
}

function closedTangent({ mechanism, planRoom, rates, stock }: PathBench, posture: Float64Array, along: Float64Array) {
  if (!planRoom || readParts(planRoom, posture) < limits.closedSine) return undefined
  ratesOf(planRoom, posture, rates)
  const tangent = stock(mechanism.columns_count)
  let square = 0
  for (let column = 0; column < tangent.length; column += 3) {
    tangent[column] = rates[column + 3]
    tangent[column + 1] = rates[column + 4]
    tangent[column + 2] = rates[column + 5] * mechanism.scale_mm
    square += tangent[column] ** 2 + tangent[column + 1] ** 2 + tangent[column + 2] ** 2
  }
  const share = dot(tangent, along) / Math.sqrt(square)
  if (!(Math.abs(share) > limits.closedSine * Math.sqrt(dot(along, along)))) return undefined
  const inverse = Math.sign(share) / Math.sqrt(square)
  for (let column = 0; column < tangent.length; column++) tangent[column] *= inverse
  return tangent
}

function denseTangent(bench: PathBench, posture: Float64Array, along: Float64Array): Float64Array | undefined {
  const { mechanism, tangentLu: lu } = bench
  closureDerivative(mechanism, posture, lu.factors)
  lu.factors.set(along, mechanism.rows_count * mechanism.columns_count)
  if (!factor(lu) || lu.pivotRatio < limits.singular_ratio) return undefined
  const tangent = bench.stock(mechanism.columns_count)
  tangent[mechanism.rows_count] = 1
  solve(lu, tangent)
  normalise(tangent)
  return tangent
}

/** Makes a row a unit row, in place. */
export function normalise(values: Float64Array): void {
  const length = Math.sqrt(dot(values, values))
  for (let i = 0; i < values.length; i++) values[i] /= length
}

/** Arc over which no part turns by more than `limits.marchTurn_rad`, mm. */
export function marchLength(mechanism: Mechanism, tangent: Float64Array): number {
  let turning = 0
  let largest = 0
  for (let column = 0; column < tangent.length; column += 3) {
    turning = Math.max(turning, Math.abs(tangent[column + 2]))
    largest = Math.max(largest, Math.abs(tangent[column]), Math.abs(tangent[column + 1]))
  }
  largest = Math.max(largest, turning)
  const rate = Math.max(turning, largest * limits.slowestTurn_ratio)
  return (limits.marchTurn_rad * mechanism.scale_mm) / rate
}

/** Posture on the plane `step_mm` ahead of a node (behind when negative), or undefined when neither road reaches it. */
export function postureAhead(bench: PathBench, node: PathNode, step_mm: number): Settled | undefined {
  const { mechanism, predicted, planRoom } = bench
  const { posture, tangent } = node
  const turned = step_mm / mechanism.scale_mm
  for (let column = 0; column < tangent.length; column += 3) {
    predicted[column + 3] = posture[column + 3] + step_mm * tangent[column]
    predicted[column + 4] = posture[column + 4] + step_mm * tangent[column + 1]
    predicted[column + 5] = posture[column + 5] + turned * tangent[column + 2]
  }
  const closed = planRoom && closedAhead(planRoom, bench.stock, { posture, tangent, predicted, step_mm })
  if (closed) return closed
  // The march has no use for more rounds, and an event lies nearer than a step that it took.
  return settleWithin(bench, predicted, planeThrough(mechanism, predicted, node.tangent), { rounds_most: limits.marchRounds })
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
  const least_mm = marchLength(bench.mechanism, node.tangent) * limits.marchLeast_ratio
  for (let step = step_mm; Math.abs(step) >= least_mm; step /= 2) {
    const next = postureAhead(bench, node, step)
    if (!next || next.firstStep_mm > limits.marchCorrection_ratio * Math.abs(step)) continue
    const tangent = tangentAt(bench, next.posture, node.tangent)
    if (!tangent || dot(tangent, node.tangent) < limits.marchStraightness_ratio) continue
    if (sameOrientation(bench, node, { posture: next.posture, tangent })) {
      return { posture: next.posture, tangent, arc_mm: node.arc_mm + step }
    }
  }
  return undefined
}

/** The same node looking the other way. */
export function reversed(node: PathNode): PathNode {
  return { ...node, tangent: node.tangent.map((value) => -value) }
}
