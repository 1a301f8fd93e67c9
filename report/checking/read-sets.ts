/** Measured sets from a table whose columns may have any names and whose decimals may be commas, as the bench book takes it. */
import type { Characteristic, Problem } from '../../engine/index.ts'
import { benchColumns, columnWords, guessColumns, guessDecimal, type NamedColumns } from './bench-columns.ts'
import { twoUnits, withPoints } from './bench-row.ts'
import { cellsOf, columnsOf } from './bench-table.ts'
import { type ReadReadings, readReadings } from './read-readings.ts'
import { withUnit } from './unit-column.ts'

/** How a table is said to be read; what is not said is guessed from its heading. */
export interface SaidOfTable {
  readonly named?: NamedColumns | undefined
  readonly decimal?: 'point' | 'comma' | undefined
}

/** How a table was read. */
export interface ReadAs {
  readonly named: NamedColumns
  readonly decimal: 'point' | 'comma'
}

/** Which columns are what, and the sign of the decimals: as it was said, else as it is guessed. */
export function readAs(rows: readonly (readonly string[])[], { named: said = {}, decimal }: SaidOfTable): ReadAs {
  const taken = new Set(Object.values(said))
  const guessed = Object.entries(guessColumns(rows[0] ?? [])).filter(([, heading]) => !taken.has(heading))
  const named: NamedColumns = Object.fromEntries([...guessed, ...Object.entries(said)])
  return { named, decimal: decimal ?? guessDecimal(rows, named) }
}

/** What a set is judged by; who measured, when and with what is for the bench book. */
const JUDGED_BY = ['serial', 'characteristic', 'found', 'x', 'y', 'uncertainty', 'visit'] as const

/** Reads the sets of a table, all of them or none. @returns how it was read too, so that it can be told */
export function readSets(
  table: { readonly rows: readonly (readonly string[])[]; readonly plan: readonly Characteristic[] },
  said: SaidOfTable = {},
): ReadReadings & { readonly as: ReadAs } {
  const { rows, plan } = table
  const all = readAs(rows, said)
  const judgedBy: ReadonlySet<string> = new Set([...JUDGED_BY, 'unit'])
  const as = { ...all, named: Object.fromEntries(Object.entries(all.named).filter(([column]) => judgedBy.has(column))) }
  const { columns, problems, passedOver } = columnsOf({ rows, named: as.named })
  if (problems.length > 0) return { problems, as }
  const wrong: Problem[] = []
  const own = rows.slice(1).map((row, index) => {
    const cells = withPoints(cellsOf(columns, row), as.decimal)
    const united = withUnit(cells)
    if (united === undefined) wrong.push(twoUnits({ row: index + 2, cells }))
    return JUDGED_BY.map((column) => (united ?? cells)[column])
  })
  if (wrong.length > 0) return { problems: wrong, as }
  const read = readReadings([JUDGED_BY, ...own], plan)
  return read.sets === undefined ? { ...read, as } : { sets: read.sets, passedOver, as }
}

/** How a table was read, a line for each column whose heading is not ours; none where all are. */
export function readAsLines({ named, decimal }: ReadAs): readonly string[] {
  const lines = benchColumns.flatMap((column) => {
    const heading = named[column]
    const isOurs = heading === undefined || heading.toLowerCase() === column
    return isOurs ? [] : [`the column ${heading} is taken for ${column} (${columnWords[column]})`]
  })
  return decimal === 'comma' ? [...lines, 'decimals are commas'] : lines
}
