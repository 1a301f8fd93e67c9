import type { Database } from 'better-sqlite3'
import { statementOf } from '../query.ts'
import { type BookRow, bookRows, bookTables, knownBy, rowName, type Value } from './book-rows.ts'

/** How much came to a bench book. */
export interface BookNews {
  /** Of all sorts but gauges, which are the workshop's. */
  readonly rows: number
  readonly lots: number
  /** Readings, certificates, tests, decisions, signatures, withdrawals, and what came back. */
  readonly entries: number
}

/**
 * Adds what a bench book from elsewhere has beyond the one here, within a transaction of the caller. Rows that are here already stay as they are,
 * and so do those that only this store has.
 *
 * @throws what SQLite says where both cannot stand in one book: a lot or a serial number of one name that is another, a plan that was frozen
 *         otherwise, or one entry that was corrected in two ways
 */
export function mergeBook(
  database: Database,
  { design, rows }: { readonly design: number; readonly rows: readonly BookRow[] },
): BookNews {
  const here = bookRows(database, design)
  const known = new Map(knownBy(here).map((key, index) => [key, here[index].id]))
  const ids = new Map<string, number>()
  const news = { rows: 0, lots: 0, entries: 0 }
  for (const [index, key] of knownBy(rows).entries()) {
    const { [index]: row } = rows
    const there = known.get(key)
    ids.set(rowName(row), there ?? added(database, { row, design, ids }))
    if (there !== undefined) continue
    if (row.table !== 'gauges') news.rows++
    if (row.table === 'lots') news.lots++
    if (ENTRIES.has(row.table)) news.entries++
  }
  return news
}

const ENTRIES: ReadonlySet<string> = new Set([
  'readings',
  'withdrawals',
  'certificates',
  'bench_tests',
  'decisions',
  'sign_offs',
  'field_log',
])
const OF_DESIGN: ReadonlySet<string> = new Set(['plans', 'lots', 'articles'])

interface Added {
  readonly row: BookRow
  readonly design: number
  /** Number here of each row there that came before. */
  readonly ids: ReadonlyMap<string, number>
}

/** Adds a row under a number of its own. @returns the number */
function added(database: Database, { row, design, ids }: Added): number {
  const names = bookTables.find(({ table }) => table === row.table)?.names ?? {}
  const values = Object.entries(row.values).map(([column, value]): readonly [string, Value] => {
    const { [column]: table } = names
    return [column, table !== undefined && typeof value === 'number' ? (ids.get(rowName({ table, id: value })) ?? null) : value]
  })
  const all = OF_DESIGN.has(row.table) ? [['design', design] as const, ...values] : values
  const columns = all.map(([column]) => `"${column}"`).join(', ')
  const statement = statementOf(database, `insert into ${row.table} (${columns}) values (${all.map(() => '?').join(', ')})`)
  return Number(statement.run(...all.map(([, value]) => value)).lastInsertRowid)
}
