/**
 * What a surface is fitted by: a constant, every source, and products. Sources stand in deviations of their laws from their means.
 *
 * A number seldom turns on each pair of sources by itself. Mostly many sources move one quantity together (how far a toggle stands short of dead
 * centre), and the number bends along that. So a source is multiplied with the slope as well: with the sum over all sources that leads straight up
 * the number. One such product speaks for a whole row of pairs, and few sets tell it.
 */

/** Two factors: a source, and another (or the same), or the slope. */
export interface Product {
  readonly source: number
  readonly by: number | 'slope'
}

/** Which terms. */
export interface Terms {
  /** One a source: its share in the slope. */
  readonly slope: ArrayLike<number>
  readonly products: readonly Product[]
}

/** A constant and every source. */
export function planeOf(sources_count: number): Terms {
  return { slope: new Float64Array(sources_count), products: [] }
}

/** The plane with the square of every source. */
export function parabolasOf(sources_count: number): Terms {
  return { ...planeOf(sources_count), products: Array.from({ length: sources_count }, (_, source) => ({ source, by: source })) }
}

/**
 * The terms that tell most, as many as there is room for: a product tells as much as both its factors move the number, and the slope moves it as
 * far as all sources together.
 *
 * @param moves one a source: how far it moves the number, not below 0
 */
export function tellingTerms(slope: Float64Array, moves: Float64Array, count: number): Terms {
  const sources = [...moves.keys()]
  const pairs: Product[] = sources.flatMap((source) => sources.slice(0, source + 1).map((by) => ({ source, by })))
  const room = Math.max(0, count - 1 - sources.length)
  if (room >= pairs.length) return { slope, products: pairs }
  const together = Math.hypot(...moves)
  const telling = ({ source, by }: Product): number => moves[source] * (by === 'slope' ? together : moves[by])
  const products = [...sources.map((source): Product => ({ source, by: 'slope' })), ...pairs]
  return { slope, products: products.sort((one, other) => telling(other) - telling(one)).slice(0, room) }
}

/** How many there are. */
export function termsCount({ slope, products }: Terms): number {
  return 1 + slope.length + products.length
}

/** Terms of one set into a row. @param inputs one a source */
export function fillTerms({ slope, products }: Terms, inputs: ArrayLike<number>, row: Float64Array): void {
  row[0] = 1
  let along = 0
  for (let source = 0; source < slope.length; source++) {
    row[1 + source] = inputs[source]
    along += slope[source] * inputs[source]
  }
  for (const [index, { source, by }] of products.entries())
    row[1 + slope.length + index] = inputs[source] * (by === 'slope' ? along : inputs[by])
}
