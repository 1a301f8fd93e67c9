/**
 * The bench book of a design as rows that can be told apart in any store. A row is known by its words: by a digest of all that stands in it, where
 * in the place of a row that it names stands the digest of that one. So the number that it has in one store or another does not matter, and one
 * entry is the same entry wherever the file has been.
 */
import type { Database } from 'better-sqlite3'
import { digest } from '../digest.ts'
import type { BenchTables } from './bench-tables.ts'

/** What SQLite keeps in a column. */
export type Value = string | number | null | Buffer

/** A row of the bench book, without the design that it belongs to. */
export interface BookRow {
  readonly table: keyof BenchTables
  readonly id: number
  readonly values: Readonly<Record<string, Value>>
}

interface BookTable {
  readonly table: keyof BenchTables
  /** Rows of the design with the key that is asked for. */
  readonly where: string
  /** Columns that name a row of another table, or an earlier one of the same. */
  readonly names: Readonly<Record<string, keyof BenchTables>>
  /** Columns that do not tell a row from another: who entered a serial number first, or froze a plan, does not make it another one. */
  readonly apart?: readonly string[]
}

const OF_DESIGN = 'design = ?'
const OF_LOT = 'lot in (select id from lots where design = ?)'
const OF_IMPORT = 'import in (select imports.id from imports join lots on lots.id = imports.lot where lots.design = ?)'
const OF_ARTICLE = 'article in (select id from articles where design = ?)'

/** Each table stands behind those that its rows name. */
export const bookTables: readonly BookTable[] = [
  // A gauge belongs to the workshop and goes with every design.
  { table: 'gauges', where: '? is not null', names: { corrects: 'gauges' } },
  { table: 'plans', where: OF_DESIGN, names: {}, apart: ['engine', 'made'] },
  { table: 'lots', where: OF_DESIGN, names: {} },
  { table: 'articles', where: OF_DESIGN, names: { lot: 'lots' }, apart: ['who', 'made'] },
  { table: 'imports', where: OF_LOT, names: { lot: 'lots' }, apart: ['file', 'who', 'made'] },
  { table: 'withdrawals', where: OF_IMPORT, names: { import: 'imports' } },
  {
    table: 'readings',
    where: OF_ARTICLE,
    names: { article: 'articles', gauge: 'gauges', import: 'imports', corrects: 'readings' },
  },
  { table: 'certificates', where: OF_LOT, names: { lot: 'lots', corrects: 'certificates' } },
  { table: 'bench_tests', where: OF_ARTICLE, names: { article: 'articles', corrects: 'bench_tests' } },
  { table: 'decisions', where: OF_ARTICLE, names: { article: 'articles', corrects: 'decisions' } },
  { table: 'sign_offs', where: OF_LOT, names: { lot: 'lots', article: 'articles' } },
  { table: 'field_log', where: OF_ARTICLE, names: { article: 'articles', corrects: 'field_log' } },
]

/** Every row of the bench book of a design, each behind those that it names. */
export function bookRows(database: Database, design: number): readonly BookRow[] {
  return bookTables.flatMap(({ table, where }) => {
    const found = database.prepare<[number], Record<string, Value>>(
      `select rowid as id, * from ${table} where ${where} order by rowid`,
    )
    return found.all(design).map(({ id, design: _, ...values }) => ({ table, id: Number(id), values }))
  })
}

/** Name of a row within one store. */
export const rowName = ({ table, id }: Pick<BookRow, 'table' | 'id'>): string => `${table} ${id}`

/** By what each row is known, in the order of the rows. Of rows that are alike to the letter the first, the second … are told apart. */
export function knownBy(rows: readonly BookRow[]): readonly string[] {
  const keys = new Map<string, string>()
  const alike = new Map<string, number>()
  return rows.map((row) => {
    const words = digest(JSON.stringify([row.table, ...tellingColumns(row).map((column) => valueKey(row, column, keys))]))
    const count = (alike.get(words) ?? 0) + 1
    alike.set(words, count)
    const key = `${row.table} ${words} ${count}`
    keys.set(rowName(row), key)
    return key
  })
}

const tableOf = ({ table }: BookRow): BookTable => bookTables.find((one) => one.table === table) as BookTable

/** A file is taken in once, whoever brought it: its readings are the same ones. */
const IMPORTED_APART: readonly string[] = ['who', 'made']

function tellingColumns(row: BookRow): readonly string[] {
  const isImported = row.table === 'readings' && typeof row.values.import === 'number'
  const apart = isImported ? IMPORTED_APART : (tableOf(row).apart ?? [])
  return Object.keys(row.values).filter((column) => !apart.includes(column))
}

function valueKey(row: BookRow, column: string, keys: ReadonlyMap<string, string>): string | number | null {
  const { [column]: value } = row.values
  const { [column]: table } = tableOf(row).names
  if (table !== undefined && typeof value === 'number') return keys.get(rowName({ table, id: value })) ?? ''
  return Buffer.isBuffer(value) ? digest(value.toString('base64')) : value
}
