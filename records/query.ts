/**
 * Queries are written by kysely, so that the compiler checks them against the tables, and run by SQLite in the same breath: a save
 * is one synchronous transaction, and nothing can come between its steps.
 */
import type { Database } from 'better-sqlite3'
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

/** Every row that a query finds. */
export function rowsOf<Row>(database: Database, query: Compilable<Row>): readonly Row[] {
  const { sql, parameters } = query.compile()
  return database.prepare<unknown[], Row>(sql).all(...parameters)
}

/** Runs a query that changes rows. */
export function change(database: Database, query: Compilable): void {
  const { sql, parameters } = query.compile()
  database.prepare(sql).run(...parameters)
}
