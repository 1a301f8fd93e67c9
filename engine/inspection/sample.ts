/** Readings of one characteristic, in the order in which they were taken. */
export interface Sample {
  readonly count: number
  readonly mean: number
  /** With one less than the count below; 0 for a single reading. */
  readonly deviation: number
  /** Mean of the differences between neighbours, without sign; 0 for a single reading. */
  readonly movingRange: number
}

/**
 * Count, mean, standard deviation and mean moving range.
 *
 * The mean is taken from the first reading on and mended once, and squares are of what is left over from it: readings that share their
 * first seven digits lose none of those that differ.
 *
 * @param values at least one, finite
 */
export function sampleOf(values: readonly number[]): Sample {
  const count = values.length
  const near = values[0] + sum(values.map((value) => value - values[0])) / count
  const mean = near + sum(values.map((value) => value - near)) / count
  if (count === 1) return { count, mean, deviation: 0, movingRange: 0 }
  const left = sum(values.map((value) => value - mean))
  const squares = sum(values.map((value) => (value - mean) ** 2)) - (left * left) / count
  const steps = values.slice(1).map((value, index) => Math.abs(value - values[index]))
  return { count, mean, deviation: Math.sqrt(Math.max(0, squares) / (count - 1)), movingRange: sum(steps) / steps.length }
}

/** How much neighbours resemble each other, −1 to 1: near 1 a drift, near −1 readings that swing from side to side. */
export function neighbourCorrelation(values: readonly number[]): number {
  const { mean } = sampleOf(values)
  const off = values.map((value) => value - mean)
  const along = sum(off.slice(1).map((value, index) => value * off[index]))
  return along / sum(off.map((value) => value * value))
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0)
}
