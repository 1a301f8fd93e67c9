/** How one figure is spread over the sets: mean, deviation, quantiles, histogram; and how two go together. */

/** Shares below which quantiles are told: three deviations of a normal one either side, one in a hundred, one in twenty, the quarters. */
export const quantileShares = [0.00135, 0.01, 0.05, 0.25, 0.5, 0.75, 0.95, 0.99, 0.99865] as const

/** Slices of a histogram. */
const slices_count = 40

/** Spread of one figure. */
export interface FigureSpread {
  /** Samples that have a value. */
  readonly samples: number
  /** Samples that have none. */
  readonly without: number
  readonly mean: number
  readonly deviation: number
  readonly least: number
  readonly most: number
  /** One for each of `quantileShares`. */
  readonly quantiles: readonly number[]
  /** Counts in slices of equal width from least to most. */
  readonly histogram: readonly number[]
}

/** @param values one a sample, NaN where there is none. @returns undefined when none has a value */
export function figureSpread(values: Float64Array): FigureSpread | undefined {
  const present = values.filter((value) => !Number.isNaN(value)).sort()
  const samples = present.length
  if (samples === 0) return undefined
  const mean = present.reduce((sum, value) => sum + value, 0) / samples
  const square = present.reduce((sum, value) => sum + (value - mean) ** 2, 0)
  return {
    samples,
    without: values.length - samples,
    mean,
    deviation: Math.sqrt(square / Math.max(1, samples - 1)),
    least: present[0],
    most: present[samples - 1],
    quantiles: quantileShares.map((share) => quantileOf(present, share)),
    histogram: histogramOf(present),
  }
}

/** Value below which a share of ascending values lies, between two of them by proportion. */
export function quantileOf(ascending: Float64Array, share: number): number {
  const place = share * (ascending.length - 1)
  const below = Math.floor(place)
  const above = Math.min(below + 1, ascending.length - 1)
  return ascending[below] + (place - below) * (ascending[above] - ascending[below])
}

function histogramOf(ascending: Float64Array): number[] {
  const counts = new Array<number>(slices_count).fill(0)
  const least = ascending[0]
  const width = (ascending[ascending.length - 1] - least) / slices_count
  for (const value of ascending) counts[width > 0 ? Math.min(slices_count - 1, Math.floor((value - least) / width)) : 0]++
  return counts
}

/** Correlation of two figures over the samples that have both, −1 to 1; undefined where one of them does not vary. */
export function correlationOf(one: Float64Array, other: Float64Array): number | undefined {
  const both = [...one.keys()].filter((sample) => !Number.isNaN(one[sample]) && !Number.isNaN(other[sample]))
  const mean = (values: Float64Array): number => both.reduce((sum, sample) => sum + values[sample], 0) / both.length
  const [meanOne, meanOther] = [mean(one), mean(other)]
  let [product, squareOne, squareOther] = [0, 0, 0]
  for (const sample of both) {
    const [x, y] = [one[sample] - meanOne, other[sample] - meanOther]
    product += x * y
    squareOne += x * x
    squareOther += y * y
  }
  return squareOne > 0 && squareOther > 0 ? product / Math.sqrt(squareOne * squareOther) : undefined
}
