/**
 * A table of readings as it comes to the bench book: its columns may have any names, and its decimals may be commas, where the reader of
 * the preview says so. Each row is read by itself, as a file of one row, so that repeats are repeats.
 */
import type { Problem } from '../../engine/index.ts'
import { type BenchCells, type BenchColumn, type BenchRow, benchColumns, type ReadAgainst, readBenchRow } from './bench-row.ts'

/** How a table is to be read. */
export interface BenchTable {
  /** Cells as text, the heading first. */
  readonly rows: readonly (readonly string[])[]
  /** Heading of a column here by the column that it is; left out where they agree. */
  readonly named?: Partial<Record<BenchColumn, string>>
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
  const found = read.flatMap((one) => one.problems ?? [])
  const nothing: Problem = { code: 'missing', place: 'row 2', found: 'no reading', needed: 'at least one' }
  return { rows, problems: read.length === 0 ? [nothing] : found, passedOver }
}

type Columns = ReadonlyMap<BenchColumn, number>

function columnsOf({ rows, named = {} }: BenchTable) {
  const heading = (rows[0] ?? []).map((cell) => cell.trim())
  const lower = heading.map((cell) => cell.toLowerCase())
  const columns = new Map<BenchColumn, number>()
  const problems: Problem[] = []
  for (const column of benchColumns) {
    const wanted = named[column]
    const index = lower.indexOf((wanted ?? column).trim().toLowerCase())
    if (index >= 0) columns.set(column, index)
    else if (wanted !== undefined)
      problems.push({
        code: 'unknown name',
        place: 'row 1',
        found: `no column ${wanted} for ${column}`,
        needed: `one of ${heading.join(', ')}`,
      })
  }
  const isWhole = columns.has('serial') && columns.has('characteristic') && (columns.has('found') || columns.has('x'))
  if (!isWhole && problems.length === 0) problems.push(noHeading(heading))
  const taken = new Set(columns.values())
  return { columns, problems, passedOver: heading.filter((name, index) => name !== '' && !taken.has(index)) }
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

function cellsOf(columns: Columns, cells: readonly string[]): BenchCells {
  const cell = (column: BenchColumn): string => {
    const index = columns.get(column)
    return index === undefined ? '' : (cells[index] ?? '').trim()
  }
  return Object.fromEntries(benchColumns.map((column) => [column, cell(column)])) as Record<BenchColumn, string>
}
