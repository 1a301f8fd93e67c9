/**
 * A turn of space that takes the first axes to given directions, as a product of reflections:
 *
 *     Q = H_1 H_2 … H_k,   H_i = 1 − 2 w wᵀ / wᵀw,   Q e_1 = ± d_1,   Q e_1 … Q e_k span d_1 … d_k
 *
 * (Householder's orthogonal factoring; Golub & Van Loan, Matrix Computations, section 5.2, from memory). Applying it costs 2k products of
 * the length of a vector; no matrix is made.
 */

/** An orthogonal map, in place. */
export interface Turn {
  readonly apply: (vector: Float64Array) => void
  /** Directions that were taken up; one that lies in the span of those before it is left out. */
  readonly directions_count: number
}

/** What is left of a direction after those before it, as a share of its length, below which it is none of its own. */
const ownShareLeast = 1e-6

/** @param directions of the length of the vectors that are turned, the most telling first */
export function turnTowards(directions: readonly ArrayLike<number>[]): Turn {
  const mirrors: Mirror[] = []
  for (const direction of directions) {
    const seen = Float64Array.from(direction)
    for (const mirror of mirrors) reflect(seen, mirror)
    const first = mirrors.length
    const own = lengthFrom(seen, first)
    if (first >= seen.length || !(own > ownShareLeast * lengthFrom(seen, 0))) continue
    seen.fill(0, 0, first)
    seen[first] += seen[first] < 0 ? -own : own
    mirrors.push({ normal: seen, twoOverSquare: 2 / lengthFrom(seen, 0) ** 2 })
  }
  const apply = (vector: Float64Array): void => {
    for (let index = mirrors.length - 1; index >= 0; index--) reflect(vector, mirrors[index])
  }
  return { apply, directions_count: mirrors.length }
}

interface Mirror {
  readonly normal: Float64Array
  readonly twoOverSquare: number
}

function reflect(vector: Float64Array, { normal, twoOverSquare }: Mirror): void {
  let along = 0
  for (let index = 0; index < vector.length; index++) along += normal[index] * vector[index]
  for (let index = 0; index < vector.length; index++) vector[index] -= along * twoOverSquare * normal[index]
}

function lengthFrom(vector: Float64Array, first: number): number {
  let square = 0
  for (let index = first; index < vector.length; index++) square += vector[index] * vector[index]
  return Math.sqrt(square)
}
