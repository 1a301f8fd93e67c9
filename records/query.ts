/**
 * Queries are written by kysely, so that the compiler checks them against the tables, and run by SQLite in the same breath: a save
 * is one synchronous transaction, and nothing can come between its steps.
 */
import type { Database, Statement } from 'better-sqlite3'
import { type Compilable, DummyDriver, Kysely, SqliteAdapter, SqliteIntrospector, SqliteQueryCompiler } from 'kysely'
import type { Tables } from './tables.ts'

/** Writes queries over the store's tables; it has no connection and runs none. */
export const tables = new Kysely<Tables>({
  dialect: {
    createAdapter: () => new SqliteAdapter(),
    createDriver: () => new DummyDriver(),
    createIntrospector: (database) => new SqliteIntrospector(database),
    createQueryCompiler: () => new SqliteQueryCompiler(),
  },
})

const prepared = new WeakMap<Database, Map<string, Statement<unknown[], unknown>>>()

/** A statement that was made ready once: with the triggers of its table that takes longer than running it. The program has some fifty of them. */
export function statementOf(database: Database, sql: string): Statement<unknown[], unknown> {
  const known = prepared.get(database) ?? new Map<string, Statement<unknown[], unknown>>()
  prepared.set(database, known)
  const there = known.get(sql) ?? database.prepare<unknown[], unknown>(sql)
  known.set(sql, there)
  return there
}

/** Every row that a query finds. */
export function rowsOf<Row>(database: Database, query: Compilable<Row>): readonly Row[] {
  const { sql, parameters } = query.compile()
  return statementOf(database, sql).all(...parameters) as readonly Row[]
}

/** Runs a query that changes rows. */
export function change(database: Database, query: Compilable): void {
  const { sql, parameters } = query.compile()
  statementOf(database, sql).run(...parameters)
}
