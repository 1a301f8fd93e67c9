/**
 * What a surface is made of: a constant, every source, its square, and products of some sources. Sources stand in deviations of their laws from
 * their means.
 */

/** Which terms. */
export interface Terms {
  readonly sources_count: number
  /** Places of the sources that are multiplied with each other. */
  readonly pairs: readonly (readonly [number, number])[]
}

/** Every pair of some sources. */
export function pairsOf(sources: readonly number[]): Terms['pairs'] {
  return sources.flatMap((one, index) => sources.slice(0, index).map((other) => [one, other] as const))
}

/** How many there are. */
export function termsCount({ sources_count, pairs }: Terms): number {
  return 1 + 2 * sources_count + pairs.length
}

/** Terms of one set into a row. @param inputs one a source */
export function fillTerms({ sources_count, pairs }: Terms, inputs: ArrayLike<number>, row: Float64Array): void {
  row[0] = 1
  for (let source = 0; source < sources_count; source++) {
    row[1 + source] = inputs[source]
    row[1 + sources_count + source] = inputs[source] * inputs[source]
  }
  const begin = 1 + 2 * sources_count
  for (let pair = 0; pair < pairs.length; pair++) row[begin + pair] = inputs[pairs[pair][0]] * inputs[pairs[pair][1]]
}

/** A sum of terms. */
export interface TermSum {
  readonly terms: Terms
  readonly coefficients: Float64Array
}

/** Sums of many rows of sets that differ in one source only: level + step · (slope + bend · step). */
export interface SumAlong {
  /** One a row. */
  readonly level: Float64Array
  readonly slope: Float64Array
  readonly bend: number
}

/**
 * Sums over rows of sets.
 *
 * @param columns one a source, one a row; that of the source in which a row's sets differ is nothing
 * @param along place of that source; absent where rows are single sets
 */
export function sumAlong(
  { terms, coefficients }: TermSum,
  columns: readonly Float64Array[],
  along: number | undefined,
): SumAlong {
  const { sources_count, pairs } = terms
  const level = new Float64Array(columns[0].length).fill(coefficients[0])
  const slope = new Float64Array(level.length).fill(along === undefined ? 0 : coefficients[1 + along])
  for (let source = 0; source < sources_count; source++)
    addParabola(level, columns[source], { slope: coefficients[1 + source], bend: coefficients[1 + sources_count + source] })
  for (const [pair, [one, other]] of pairs.entries()) {
    const share = coefficients[1 + 2 * sources_count + pair]
    if (one === along) addScaled(slope, columns[other], share)
    else if (other === along) addScaled(slope, columns[one], share)
    else addProduct(level, { one: columns[one], other: columns[other], share })
  }
  return { level, slope, bend: along === undefined ? 0 : coefficients[1 + sources_count + along] }
}

function addParabola(
  out: Float64Array,
  column: Float64Array,
  { slope, bend }: { readonly slope: number; readonly bend: number },
): void {
  for (let row = 0; row < out.length; row++) out[row] += column[row] * (slope + bend * column[row])
}

function addScaled(out: Float64Array, column: Float64Array, share: number): void {
  for (let row = 0; row < out.length; row++) out[row] += share * column[row]
}

interface Product {
  readonly one: Float64Array
  readonly other: Float64Array
  readonly share: number
}

function addProduct(out: Float64Array, { one, other, share }: Product): void {
  for (let row = 0; row < out.length; row++) out[row] += share * one[row] * other[row]
}
