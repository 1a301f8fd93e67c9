/**
 * A table of readings as it comes to the bench book: its columns may have any names, and its decimals may be commas, where the reader of
 * the preview says so. Each row is read by itself, as a file of one row, so that repeats are repeats.
 */
import { limits, type Problem } from '../../engine/index.ts'
import { type BenchCells, type BenchColumn, benchColumns, type NamedColumns } from './bench-columns.ts'
import { type BenchRow, type ReadAgainst, readBenchRow } from './bench-row.ts'

/** How a table is to be read. */
export interface BenchTable {
  /** Cells as text, the heading first. */
  readonly rows: readonly (readonly string[])[]
  /** Which columns are taken, each by its heading here; those of our own names where it is left out. */
  readonly named?: NamedColumns
  readonly decimal?: 'point' | 'comma'
}

/** Rows that were read, every problem by row and column, and the headings that nothing was taken from. */
export interface ReadBenchTable {
  readonly rows: readonly BenchRow[]
  readonly problems: readonly Problem[]
  readonly passedOver: readonly string[]
}

/** Reads a table of readings. Where there is one problem, no row should be kept. */
export function readBenchTable(table: BenchTable, against: ReadAgainst): ReadBenchTable {
  const { columns, problems, passedOver } = columnsOf(table)
  if (problems.length > 0) return { rows: [], problems, passedOver }
  const read = table.rows.slice(1).flatMap((cells, index) => {
    if (cells.every((cell) => cell.trim() === '')) return []
    return [readBenchRow({ row: index + 2, cells: cellsOf(columns, cells), decimal: table.decimal ?? 'point' }, against)]
  })
  const rows = read.flatMap(({ value }) => (value === undefined ? [] : [value]))
  const found = [...read.flatMap((one) => one.problems ?? []), ...numberedTwice(rows)]
  const nothing: Problem = { code: 'missing', place: 'row 2', found: 'no reading', needed: 'at least one' }
  return { rows, problems: read.length === 0 ? [nothing] : atMost(found), passedOver }
}

/** By its number a reading is corrected further down: two of one number cannot be told apart. */
function numberedTwice(rows: readonly BenchRow[]): readonly Problem[] {
  const seen = new Set<number>()
  return rows.flatMap(({ row, number }) => {
    if (number === undefined || !seen.has(number)) {
      if (number !== undefined) seen.add(number)
      return []
    }
    const needed = 'another number for each reading of the table'
    return [{ code: 'name taken', place: `row ${row}, reading`, found: `${number}, which stands above already`, needed }]
  })
}

/** Nobody mends more in one go; how many there are further is told. */
function atMost(problems: readonly Problem[]): readonly Problem[] {
  const more = problems.length - limits.problems
  if (more <= 0) return problems
  const told: Problem = { code: 'too many', place: 'table', found: `${more} problems more`, needed: 'none' }
  return [...problems.slice(0, limits.problems), told]
}

/** Which column stands where. */
export type Columns = ReadonlyMap<BenchColumn, number>

/** Where each column is, every problem of the heading, and the headings that nothing is taken from. */
export function columnsOf({ rows, named = ownNames }: BenchTable) {
  const heading = (rows[0] ?? []).map((cell) => cell.trim())
  const lower = heading.map((cell) => cell.toLowerCase())
  const columns = new Map<BenchColumn, number>()
  const problems: Problem[] = []
  for (const column of benchColumns) {
    const name = named[column]?.trim().toLowerCase()
    if (name === undefined) continue
    const index = lower.indexOf(name)
    if (index >= 0) columns.set(column, index)
    if (index !== lower.lastIndexOf(name)) problems.push(headedTwice(heading[index]))
    if (index < 0 && named !== ownNames) problems.push(noColumn(column, name, heading))
  }
  const isWhole = columns.has('serial') && columns.has('characteristic') && (columns.has('found') || columns.has('x'))
  if (!isWhole && problems.length === 0) problems.push(noHeading(heading))
  const taken = new Set(columns.values())
  return { columns, problems, passedOver: heading.filter((name, index) => name !== '' && !taken.has(index)) }
}

const ownNames: NamedColumns = Object.fromEntries(benchColumns.map((column) => [column, column]))

function noColumn(column: BenchColumn, name: string, heading: readonly string[]): Problem {
  return {
    code: 'unknown name',
    place: 'row 1',
    found: `no column ${name} for ${column}`,
    needed: `one of ${heading.join(', ')}`,
  }
}

function headedTwice(found: string): Problem {
  const needed = 'another heading for each column that is taken'
  return { code: 'name taken', place: 'row 1', found: `${found} over two columns`, needed }
}

function noHeading(heading: readonly string[]): Problem {
  return {
    code: 'wrong value',
    place: 'row 1',
    found: heading.join(', ') || 'nothing',
    needed: 'a heading with serial, characteristic and found (or x and y)',
    wayOut: 'Say which of its columns is which.',
  }
}

/** A row by its columns. */
export function cellsOf(columns: Columns, cells: readonly string[]): BenchCells {
  const cell = (column: BenchColumn): string => {
    const index = columns.get(column)
    return index === undefined ? '' : (cells[index] ?? '').trim()
  }
  return Object.fromEntries(benchColumns.map((column) => [column, cell(column)])) as Record<BenchColumn, string>
}
