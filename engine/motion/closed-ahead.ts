/**
 * The posture on the plane ahead of a node by the plan instead of by Newton's method on all parts.
 *
 * Newton on all parts looks for the posture with t · (posture − predicted) = 0. Along the plan's postures that is one
 * equation for the turn of the leading part alone, whose slope at the node is known (scale / t of that turn). Both roads
 * look for the same posture, so a march may change from one to the other anywhere. Near a place where a step of the plan
 * has both ways in one, or where the leading part stands still, this road says nothing and the other one is taken.
 */
import { type ArrayStock, copied } from '../numbers/array-stock.ts'
import { limits } from '../numbers/limits.ts'
import { placeOnSides, readSides } from './place-parts.ts'
import type { PlanRoom } from './plan-room.ts'
import type { Settled } from './settle.ts'

/** Secant rounds: from a correction of a tenth of a step four or five reach the last digit. */
const ROUNDS = 8

export interface AheadOf {
  /** At the node; says on which side each step of the plan lies. */
  readonly posture: Float64Array
  readonly tangent: Float64Array
  readonly predicted: Float64Array
  readonly step_mm: number
}

/** @returns the posture, or undefined where this road is not good enough */
export function closedAhead(room: PlanRoom, stock: ArrayStock, from: AheadOf): Settled | undefined {
  const { lead, mechanism } = room.plan
  if (!lead) return undefined
  const { tangent, predicted } = from
  const leadRate = tangent[3 * lead.part - 1]
  if (Math.abs(leadRate) < limits.closedSine) return undefined
  const posture = copied(stock, from.posture)
  readSides(room, posture)
  let slope = mechanism.scale_mm / leadRate
  let turn = predicted[3 * lead.part + 2]
  let lastTurn = 0
  let lastAway = 0
  for (let round = 0; round < ROUNDS; round++) {
    if (!placeOnSides(room, posture, turn) || room.conditioning < limits.closedSine) return undefined
    const away = awayFromPlane(mechanism.scale_mm, posture, from)
    if (Math.abs(away) <= limits.eventWidth_ratio * mechanism.scale_mm) {
      const firstStep_mm = largestWay(mechanism.scale_mm, posture, predicted)
      return firstStep_mm <= farthest(mechanism.scale_mm, from.step_mm) ? { posture, rounds: round, firstStep_mm } : undefined
    }
    if (round > 0) slope = (away - lastAway) / (turn - lastTurn)
    lastTurn = turn
    lastAway = away
    turn -= away / slope
  }
  return undefined
}

function farthest(scale_mm: number, step_mm: number): number {
  return limits.marchCorrection_ratio * Math.abs(step_mm) + limits.closureRounding_ratio * scale_mm
}

/** t · (posture − predicted), mm. */
function awayFromPlane(scale_mm: number, posture: Float64Array, { tangent, predicted }: AheadOf): number {
  let away = 0
  for (let column = 0; column < tangent.length; column += 3) {
    away += tangent[column] * (posture[column + 3] - predicted[column + 3])
    away += tangent[column + 1] * (posture[column + 4] - predicted[column + 4])
    away += tangent[column + 2] * (posture[column + 5] - predicted[column + 5]) * scale_mm
  }
  return away
}

function largestWay(scale_mm: number, posture: Float64Array, predicted: Float64Array): number {
  let largest = 0
  for (let index = 3; index < posture.length; index += 3) {
    const x = Math.abs(posture[index] - predicted[index])
    const y = Math.abs(posture[index + 1] - predicted[index + 1])
    const turn = Math.abs(posture[index + 2] - predicted[index + 2]) * scale_mm
    if (x > largest) largest = x
    if (y > largest) largest = y
    if (turn > largest) largest = turn
  }
  return largest
}
