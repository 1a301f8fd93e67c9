/**
 * Sets that surfaces look at, every one of them.
 *
 * Drawing a set takes longer than asking a surface about it. So each set that is drawn stands for a row of sets, which differ in their leading
 * source only: it goes evenly through its law, a step in each of as many shares of it as the row has sets. Over the leading source, on which most
 * hangs, there is then hardly any chance left.
 */
import { momentsOf, quantileOf, valuesOfShares } from '../sources/law.ts'
import type { Source } from '../sources/source.ts'
import { sharesOf } from '../spread/cloud.ts'

/** Sets in rows. */
export interface DrawnSets {
  readonly rows_count: number
  readonly row_sets: number
  /** One a source: its value in every row, in deviations of its law from its mean; nothing for one that does not vary, and for the leading one. */
  readonly columns: readonly Float64Array[]
  /** Place of the leading source; absent where rows are single sets. */
  readonly leading?: number
  /** Of the leading source, in deviations: row by row, one a set. */
  readonly steps: Float64Array
  /** Values of a set, one a source, in its unit. @param set its number: those of a row follow one another */
  readonly valuesOf: (set: number) => Float64Array
}

/** Which sets. */
export interface DrawAsked {
  readonly seed: number
  readonly rows_count: number
  /** Place of the leading source; one that goes over a disc with another cannot lead. */
  readonly leading?: number
}

/** Sets of a row with a leading source. */
const leading_row_sets = 16

/** Draws sets. The same seed gives the same sets. */
export function drawnSets(sources: readonly Source[], { seed, rows_count, leading }: DrawAsked): DrawnSets {
  const row_sets = leading === undefined ? 1 : leading_row_sets
  const moments = sources.map(({ law }) => momentsOf(law))
  const toValues = valuesOfShares(sources)
  const columns = sharesIn({ seed, rows_count, sources_count: sources.length })
  const along = leading === undefined ? undefined : alongLaw(sources[leading], columns[leading], row_sets)
  toValues(columns)
  const values = columns.map((column) => column.slice())
  for (const [source, column] of columns.entries()) putInDeviations(column, moments[source])
  const steps = along?.slice() ?? new Float64Array(rows_count)
  if (leading !== undefined) {
    putInDeviations(steps, moments[leading])
    columns[leading].fill(0)
  }
  const valuesOf = (set: number): Float64Array => {
    const own = Float64Array.from(values, (column) => column[Math.floor(set / row_sets)])
    if (leading !== undefined && along) own[leading] = along[set]
    return own
  }
  return { rows_count, row_sets, columns, steps, valuesOf, ...(leading !== undefined && { leading }) }
}

interface SharesAsked {
  readonly seed: number
  readonly rows_count: number
  readonly sources_count: number
}

/** A column a source of shares between 0 and 1. */
function sharesIn({ seed, rows_count, sources_count }: SharesAsked): readonly Float64Array[] {
  const { fill } = sharesOf({ dimensions: sources_count, seed })
  const columns = Array.from({ length: sources_count }, () => new Float64Array(rows_count))
  const row = new Float64Array(sources_count)
  for (let set = 0; set < rows_count; set++) {
    fill(set, row)
    for (let source = 0; source < sources_count; source++) columns[source][set] = row[source]
  }
  return columns
}

/** Values of a source through its law: each row begins where its own share lies within a step. */
function alongLaw({ law }: Source, shares: Float64Array, row_sets: number): Float64Array {
  if (law.kind === 'disc') throw new Error('surfaces: a source that goes over a disc cannot lead')
  const atShare = quantileOf(law)
  const values = new Float64Array(shares.length * row_sets)
  for (let row = 0; row < shares.length; row++)
    for (let set = 0; set < row_sets; set++) values[row * row_sets + set] = atShare((set + shares[row]) / row_sets)
  return values
}

function putInDeviations(column: Float64Array, { mean, deviation }: ReturnType<typeof momentsOf>): void {
  if (!(deviation > 0)) column.fill(0)
  else for (let set = 0; set < column.length; set++) column[set] = (column[set] - mean) / deviation
}
