/**
 * Sets that surfaces look at, every one of them.
 *
 * Drawing a set takes longer than asking a surface about it. So each set that is drawn stands for a row of sets, which differ in their leading
 * source only: it goes evenly through its law, a step in each of as many shares of it as the row has sets. Over the leading source, on which most
 * hangs, there is then hardly any chance left.
 */
import { momentsOf, quantileOf, valuesOfShares } from '../sources/law.ts'
import type { Source } from '../sources/source.ts'
import { type Cloud, sharesOf } from '../spread/cloud.ts'

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

/** Sets of one seed: the same one gives the same sets. */
export interface Drawing {
  /** Values of the first sets as they were drawn, set by set, one a source. */
  readonly firstValues: (count: number) => readonly Float64Array[]
  /** Draws so many rows before they are asked for, while something else is waited for. */
  readonly prepare: (rows_count: number) => void
  readonly rows: (asked: RowsAsked) => DrawnSets
}

/** Which rows. */
export interface RowsAsked {
  readonly rows_count: number
  /** Place of the leading source; one that goes over a disc with another cannot lead. */
  readonly leading?: number
}

/** Sets of a row with a leading source. */
const leading_row_sets = 16

/** Rows that were drawn, whatever leads them; columns one a source. */
interface DrawnRows {
  readonly shares: readonly Float64Array[]
  readonly values: readonly Float64Array[]
  readonly inputs: readonly Float64Array[]
}

/** Lays out the sets of a seed, which takes as long as some hundreds of them. */
export function drawing(sources: readonly Source[], seed: number): Drawing {
  const { fill } = sharesOf({ dimensions: sources.length, seed })
  const toValues = valuesOfShares(sources)
  const moments = sources.map(({ law }) => momentsOf(law))
  const draw = (rows_count: number): DrawnRows => {
    const shares = columnsOf(fill, { rows_count, sources_count: sources.length })
    const values = shares.map((column) => column.slice())
    toValues(values)
    return { shares, values, inputs: values.map((column, source) => inDeviationsOf(column, moments[source])) }
  }
  let prepared: DrawnRows | undefined
  const prepare = (rows_count: number): DrawnRows => {
    if (prepared?.inputs[0].length !== rows_count) prepared = draw(rows_count)
    return prepared
  }
  const rows = ({ rows_count, leading }: RowsAsked): DrawnSets => {
    const drawn = prepare(rows_count)
    if (leading === undefined) return singleSets(drawn, rows_count)
    const { mean, deviation } = moments[leading]
    const along = alongLaw(sources[leading], drawn.shares[leading])
    return {
      ...{ rows_count, row_sets: leading_row_sets, leading },
      columns: drawn.inputs.map((column, source) => (source === leading ? new Float64Array(rows_count) : column)),
      steps: inDeviationsOf(along, { mean, deviation }),
      valuesOf: (set) => {
        const own = Float64Array.from(drawn.values, (column) => column[Math.floor(set / leading_row_sets)])
        own[leading] = along[set]
        return own
      },
    }
  }
  const firstValues = (count: number): readonly Float64Array[] => {
    const { valuesOf } = singleSets(draw(count), count)
    return Array.from({ length: count }, (_, set) => valuesOf(set))
  }
  return { firstValues, prepare: (rows_count) => void prepare(rows_count), rows }
}

function singleSets({ values, inputs }: DrawnRows, rows_count: number): DrawnSets {
  const valuesOf = (set: number): Float64Array => Float64Array.from(values, (column) => column[set])
  return { rows_count, row_sets: 1, columns: inputs, steps: new Float64Array(rows_count), valuesOf }
}

interface ColumnsAsked {
  readonly rows_count: number
  readonly sources_count: number
}

/** A column a source of shares between 0 and 1. */
function columnsOf(fill: Cloud['fill'], { rows_count, sources_count }: ColumnsAsked): readonly Float64Array[] {
  const columns = Array.from({ length: sources_count }, () => new Float64Array(rows_count))
  const row = new Float64Array(sources_count)
  for (let set = 0; set < rows_count; set++) {
    fill(set, row)
    for (let source = 0; source < sources_count; source++) columns[source][set] = row[source]
  }
  return columns
}

/** Values of a source through its law: each row begins where its own share lies within a step. */
function alongLaw({ law }: Source, shares: Float64Array): Float64Array {
  if (law.kind === 'disc') throw new Error('surfaces: a source that goes over a disc cannot lead')
  const atShare = quantileOf(law)
  const values = new Float64Array(shares.length * leading_row_sets)
  for (let row = 0, set = 0; row < shares.length; row++)
    for (let step = 0; step < leading_row_sets; step++) values[set++] = atShare((step + shares[row]) / leading_row_sets)
  return values
}

/** Of a source that does not vary, nothing. */
function inDeviationsOf(values: Float64Array, { mean, deviation }: ReturnType<typeof momentsOf>): Float64Array {
  return deviation > 0 ? values.map((value) => (value - mean) / deviation) : new Float64Array(values.length)
}
