/** Scalar product of two rows of the same length. */
export function dot(one: Float64Array, other: Float64Array): number {
  let sum = 0
  for (let index = 0; index < one.length; index++) sum += one[index] * other[index]
  return sum
}

/** Adds a multiple of a row to another of the same length, in place. */
export function addScaled(out: Float64Array, row: Float64Array, scale: number): void {
  for (let index = 0; index < out.length; index++) out[index] += scale * row[index]
}
