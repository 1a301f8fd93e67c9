/** A number as a polynomial of the second degree in its sources: constant + Σ slopeᵢ xᵢ + Σ bendᵢⱼ xᵢ xⱼ over i ≥ j. */
import { addScaled } from '../../numbers/row.ts'
import type { Terms } from './terms.ts'

/** Its coefficients. */
export interface Quadratic {
  readonly constant: number
  /** One a source. */
  readonly slopes: Float64Array
  /** Source by source, one for itself and each before it. */
  readonly bends: readonly Float64Array[]
}

/** The sum of terms with their coefficients, each product taken apart into pairs. */
export function quadraticOf({ slope, products }: Terms, coefficients: Float64Array): Quadratic {
  const [constant] = coefficients
  const bends = Array.from({ length: slope.length }, (_, source) => new Float64Array(source + 1))
  const add = (one: number, other: number, share: number): void => {
    bends[Math.max(one, other)][Math.min(one, other)] += share
  }
  for (const [index, { source, by }] of products.entries()) {
    const share = coefficients[1 + slope.length + index]
    if (by !== 'slope') add(source, by, share)
    else for (let other = 0; other < slope.length; other++) add(source, other, share * slope[other])
  }
  return { constant, slopes: coefficients.slice(1, 1 + slope.length), bends }
}

/** Values of many rows of sets that differ in one source only: level + step · (slope + bend · step). */
export interface ValuesAlong {
  /** One a row. */
  readonly level: Float64Array
  readonly slope: Float64Array
  readonly bend: number
}

/**
 * Values over rows of sets.
 *
 * @param columns one a source, one a row; that of the source in which a row's sets differ is nothing
 * @param along place of that source; absent where rows are single sets
 */
export function valuesAlong(quadratic: Quadratic, columns: readonly Float64Array[], along: number | undefined): ValuesAlong {
  const { constant, slopes, bends } = quadratic
  const level = new Float64Array(columns[0].length).fill(constant)
  const factor = new Float64Array(level.length)
  for (const [source, column] of columns.entries()) {
    factor.fill(slopes[source])
    for (const [other, bend] of bends[source].entries()) if (bend !== 0) addScaled(factor, columns[other], bend)
    for (let row = 0; row < level.length; row++) level[row] += column[row] * factor[row]
  }
  return along === undefined
    ? { level, slope: new Float64Array(level.length), bend: 0 }
    : { level, slope: slopesAlong(quadratic, columns, along), bend: bends[along][along] }
}

/** Slope along one source in every row, where that source is nothing. */
function slopesAlong({ slopes, bends }: Quadratic, columns: readonly Float64Array[], along: number): Float64Array {
  const slope = new Float64Array(columns[0].length).fill(slopes[along])
  for (const [other, column] of columns.entries())
    if (other !== along) addScaled(slope, column, bends[Math.max(along, other)][Math.min(along, other)])
  return slope
}
