/**
 * Newton's method for a posture: the closure equations and one further condition.
 *
 * The start must be near: the step is never more than `limits.settleStep_ratio` of the mechanism's scale a round, and the
 * residual must fall. A posture that does not settle is `undefined`, never a guess.
 */

import { type ArrayStock, arrayStock, copied } from '../numbers/array-stock.ts'
import { limits } from '../numbers/limits.ts'
import { factor, type Lu, makeLu, solve } from '../numbers/lu.ts'
import { type ClosureRoom, closureDerivative, closureGap, type ForceRow } from './closure.ts'
import type { Condition } from './condition.ts'
import type { Mechanism } from './mechanism.ts'

/** Room for the solutions of one mechanism; one a caller, never shared between two that run at once. */
export interface Bench extends ClosureRoom {
  readonly lu: Lu
  readonly gap: Float64Array
  /** Where the arrays of its answers come from. */
  readonly stock: ArrayStock
}

/** Room for `settle`. */
export function makeBench(mechanism: Mechanism): Bench {
  const stock = arrayStock()
  const { columns_count, parts_count } = mechanism
  return { mechanism, partTurns: stock(2 * parts_count), lu: makeLu(columns_count), gap: stock(columns_count), stock }
}

export interface Settled {
  readonly posture: Float64Array
  /** Derivatives that were needed. */
  readonly rounds: number
  /** Largest part of the first correction, mm. */
  readonly firstStep_mm: number
}

/**
 * @param start near posture; not changed
 * @param offsets clearance take-up of each closure row, mm, or undefined
 * @returns the posture, closed to about 1e-12 of the scale, or undefined where none was reached from this start
 */
export function settle(bench: Bench, start: Float64Array, condition: Condition, offsets?: Float64Array): Settled | undefined {
  return settleWithin(bench, start, condition, { offsets, rounds_most: limits.settleRounds })
}

export interface SettleBounds {
  readonly offsets?: Float64Array | undefined
  /** Whether the derivative in the room is that of a posture close by, with the same condition: then it is tried before a new one is made. */
  readonly isFactored?: boolean
  /** Derivatives after which it is given up. */
  readonly rounds_most: number
}

/** As `settle`, for a caller who has no use for a posture that takes many rounds. */
export function settleWithin(
  bench: Bench,
  start: Float64Array,
  condition: Condition,
  { offsets, rounds_most, isFactored = false }: SettleBounds,
): Settled | undefined {
  const { mechanism, lu, gap } = bench
  const posture = copied(bench.stock, start)
  const row = { mechanism, posture, out: lu.factors, start: mechanism.rows_count * mechanism.columns_count }
  let firstStep_mm = 0
  let lastGap = Number.POSITIVE_INFINITY
  let rounds = 0
  for (let trial = 0; ; trial++) {
    closureGap(bench, posture, offsets, gap)
    gap[mechanism.rows_count] = condition.value(posture)
    const largest = largestOf(gap)
    if (!Number.isFinite(largest)) return undefined
    if (isClosed(largest, lastGap, mechanism)) return { posture, rounds, firstStep_mm }
    if (trial === 0 ? !isFactored : !serves(largest, lastGap, mechanism)) {
      if (rounds++ === rounds_most || !factorAt(row, condition, lu)) return undefined
    }
    lastGap = largest
    solve(lu, gap)
    const step_mm = largestOf(gap)
    if (trial === 0) firstStep_mm = step_mm
    const shorten = Math.min(1, (limits.settleStep_ratio * mechanism.scale_mm) / step_mm)
    moveBack(mechanism, posture, gap, shorten)
  }
}

/** Whether the last derivative still serves: it has closed the gap well, or only rounding is left. Each trial lowers the gap, so it ends. */
function serves(largest: number, last: number, mechanism: Mechanism): boolean {
  return largest <= limits.keptDerivative_ratio * last || largest <= limits.closureRounding_ratio * mechanism.scale_mm
}

/** Factors of the closure derivative at a posture with the condition's own as the last row. */
function factorAt(row: ForceRow, condition: Condition, lu: Lu): boolean {
  closureDerivative(row.mechanism, row.posture, lu.factors)
  lu.factors.fill(0, row.start)
  condition.addDerivative(row)
  return factor(lu) && lu.pivotRatio >= limits.singular_ratio
}

/** Closed to the tolerance, or to rounding when a further round no longer helps. */
function isClosed(largest: number, last: number, mechanism: Mechanism): boolean {
  if (largest <= limits.closureTolerance_ratio * mechanism.scale_mm) return true
  return largest >= last / 2 && largest <= limits.closureRounding_ratio * mechanism.scale_mm
}

function moveBack(mechanism: Mechanism, posture: Float64Array, step: Float64Array, share: number): void {
  for (let column = 0; column < step.length; column += 3) {
    posture[column + 3] -= share * step[column]
    posture[column + 4] -= share * step[column + 1]
    posture[column + 5] -= (share * step[column + 2]) / mechanism.scale_mm
  }
}

/** Largest magnitude; NaN when one of them is no number. */
export function largestOf(values: Float64Array): number {
  let largest = 0
  for (let index = 0; index < values.length; index++) {
    const magnitude = Math.abs(values[index])
    if (!(magnitude <= largest)) largest = magnitude
  }
  return largest
}
