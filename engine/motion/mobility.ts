/**
 * Freedoms of the mechanism: by count (Kutzbach) and by rank at the drawn posture.
 *
 *   degrees = 3 (parts − 1) − 2 pins − 1 slots          (a joint of k parts on one pin counts k − 1 times)
 *
 * The count is blind to special lengths, so the rank of the closure derivative is taken as well; where the two differ the
 * extra freedom exists only for exact lengths, and parts made to a tolerance will bind.
 */
import { limits } from '../numbers/limits.ts'
import { closureDerivative } from './closure.ts'
import { driveCoordinate } from './condition.ts'
import type { Mechanism } from './mechanism.ts'
import { derivativeOf } from './path.ts'

export interface Mobility {
  readonly degrees: number
  /** columns less rank at the posture */
  readonly byRank: number
  /** Parts that can still move with the drive held; empty when the drive rules all. */
  readonly loose: readonly number[]
}

/** @param posture closed; the rank is taken there */
export function mobilityOf(mechanism: Mechanism, posture: Float64Array): Mobility {
  const { rows_count: rows, columns_count: columns } = mechanism
  const degrees = columns - rows
  const matrix = new Float64Array((rows + 1) * columns)
  closureDerivative(mechanism, posture, matrix)
  const free = reduce(matrix.slice(0, rows * columns), rows, columns)
  matrix.set(derivativeOf(mechanism, posture, driveCoordinate(mechanism, posture)), rows * columns)
  const held = reduce(matrix, rows + 1, columns)
  return { degrees, byRank: columns - free.rank, loose: looseParts(held, columns) }
}

/**
 * Parts that can move under some rows of derivatives, ascending.
 *
 * @param matrix row-major; it is used up
 */
export function freeParts(
  matrix: Float64Array,
  { rows, columns }: { readonly rows: number; readonly columns: number },
): readonly number[] {
  return looseParts(reduce(matrix, rows, columns), columns)
}

interface Reduced {
  readonly rank: number
  readonly matrix: Float64Array
  readonly pivotColumns: readonly number[]
}

/** Gauss-Jordan; each column takes its largest remaining entry as pivot. */
function reduce(matrix: Float64Array, rows: number, columns: number): Reduced {
  const pivotColumns: number[] = []
  let rank = 0
  for (let column = 0; column < columns && rank < rows; column++) {
    let best = rank
    for (let row = rank + 1; row < rows; row++)
      if (Math.abs(matrix[row * columns + column]) > Math.abs(matrix[best * columns + column])) best = row
    if (Math.abs(matrix[best * columns + column]) < limits.rank_ratio) continue
    for (let c = 0; c < columns; c++) {
      const kept = matrix[best * columns + c]
      matrix[best * columns + c] = matrix[rank * columns + c]
      matrix[rank * columns + c] = kept
    }
    clearColumn(matrix, rows, columns, rank, column)
    pivotColumns.push(column)
    rank++
  }
  return { rank, matrix, pivotColumns }
}

function clearColumn(matrix: Float64Array, rows: number, columns: number, rank: number, column: number): void {
  const inverse = 1 / matrix[rank * columns + column]
  for (let c = 0; c < columns; c++) matrix[rank * columns + c] *= inverse
  for (let row = 0; row < rows; row++) {
    const share = matrix[row * columns + column]
    if (row === rank || share === 0) continue
    for (let c = 0; c < columns; c++) matrix[row * columns + c] -= share * matrix[rank * columns + c]
  }
}

/** A part is loose when a free column is its own or feeds one of its pivots. */
function looseParts(held: Reduced, columns: number): number[] {
  const loose = new Set<number>()
  const pivots = new Set(held.pivotColumns)
  for (let column = 0; column < columns; column++) {
    if (pivots.has(column)) continue
    loose.add(Math.floor(column / 3) + 1)
    held.pivotColumns.forEach((pivot, row) => {
      if (Math.abs(held.matrix[row * columns + column]) > limits.rank_ratio) loose.add(Math.floor(pivot / 3) + 1)
    })
  }
  return [...loose].sort((a, b) => a - b)
}
