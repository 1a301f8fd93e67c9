/**
 * Dense LU factors with row exchange, row-major, for the small square systems of one finger (about 15 rows).
 *
 * Method: Doolittle with partial pivoting (any text on numerical linear algebra, e.g. Golub & Van Loan, Matrix Computations,
 * section 3.4, from memory). The same factors solve A x = b and Aᵀ x = b: motion needs the first, forces the second.
 */
export interface Lu {
  readonly size: number
  readonly factors: Float64Array
  readonly exchanges: Int32Array
  /** One over each pivot: solving multiplies where it would divide. */
  readonly inversePivots: Float64Array
  /** Smallest pivot over largest: below about 1e-12 the matrix is singular for our purposes. */
  pivotRatio: number
}

/** Room for factors of one size; reused from posture to posture. */
export function makeLu(size: number): Lu {
  const inversePivots = new Float64Array(size)
  return { size, factors: new Float64Array(size * size), exchanges: new Int32Array(size), inversePivots, pivotRatio: 0 }
}

/** Factors the matrix that stands in `lu.factors`, in place. Returns false when a column has no pivot at all. */
export function factor(lu: Lu): boolean {
  const { size, factors: a, exchanges, inversePivots } = lu
  let least = Number.POSITIVE_INFINITY
  let most = 0
  for (let k = 0; k < size; k++) {
    const pivotRow = rowOfLargest(a, size, k)
    exchanges[k] = pivotRow
    if (pivotRow !== k) swapRows(a, size, k, pivotRow)
    const pivot = a[k * size + k]
    const magnitude = Math.abs(pivot)
    if (!(magnitude > 0)) {
      lu.pivotRatio = 0
      return false
    }
    if (magnitude < least) least = magnitude
    if (magnitude > most) most = magnitude
    inversePivots[k] = 1 / pivot
    eliminateBelow(a, size, k, inversePivots[k])
  }
  lu.pivotRatio = least / most
  return true
}

function rowOfLargest(a: Float64Array, size: number, k: number): number {
  let row = k
  let largest = Math.abs(a[k * size + k])
  for (let i = k + 1; i < size; i++) {
    const candidate = Math.abs(a[i * size + k])
    if (candidate > largest) {
      largest = candidate
      row = i
    }
  }
  return row
}

function swapRows(a: Float64Array, size: number, i: number, j: number): void {
  for (let c = 0; c < size; c++) {
    const kept = a[i * size + c]
    a[i * size + c] = a[j * size + c]
    a[j * size + c] = kept
  }
}

function eliminateBelow(a: Float64Array, size: number, k: number, inversePivot: number): void {
  const rowK = k * size
  for (let i = k + 1; i < size; i++) {
    const rowI = i * size
    const share = a[rowI + k] * inversePivot
    a[rowI + k] = share
    if (share === 0) continue
    for (let c = k + 1; c < size; c++) a[rowI + c] -= share * a[rowK + c]
  }
}

/** +1 or −1: the sign of the determinant of the matrix that was factored. */
export function determinantSign({ size, factors, exchanges }: Lu): 1 | -1 {
  let negative = false
  for (let k = 0; k < size; k++) if ((exchanges[k] !== k) !== factors[k * size + k] < 0) negative = !negative
  return negative ? -1 : 1
}

/** Solves A x = b; `b` becomes x. */
export function solve(lu: Lu, b: Float64Array): void {
  const { size, factors: a, exchanges, inversePivots } = lu
  for (let k = 0; k < size; k++) {
    const row = exchanges[k]
    const kept = b[row]
    b[row] = b[k]
    b[k] = kept
  }
  for (let i = 1; i < size; i++) {
    let sum = b[i]
    for (let c = 0; c < i; c++) sum -= a[i * size + c] * b[c]
    b[i] = sum
  }
  for (let i = size - 1; i >= 0; i--) {
    let sum = b[i]
    for (let c = i + 1; c < size; c++) sum -= a[i * size + c] * b[c]
    b[i] = sum * inversePivots[i]
  }
}

/** Solves Aᵀ x = b; `b` becomes x. */
export function solveTransposed(lu: Lu, b: Float64Array): void {
  const { size, factors: a, exchanges, inversePivots } = lu
  for (let k = 0; k < size; k++) {
    const value = b[k] * inversePivots[k]
    b[k] = value
    if (value === 0) continue
    for (let c = k + 1; c < size; c++) b[c] -= a[k * size + c] * value
  }
  for (let k = size - 1; k > 0; k--) {
    const value = b[k]
    if (value === 0) continue
    for (let c = 0; c < k; c++) b[c] -= a[k * size + c] * value
  }
  for (let k = size - 1; k >= 0; k--) {
    const row = exchanges[k]
    const kept = b[row]
    b[row] = b[k]
    b[k] = kept
  }
}
