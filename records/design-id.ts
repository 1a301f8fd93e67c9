import type { Database } from 'better-sqlite3'
import { change, rowsOf, tables } from './query.ts'

/** The key of a design in the tables; undefined for a name that is not in the store. */
export function designId(database: Database, name: string): number | undefined {
  return rowsOf(database, tables.selectFrom('designs').select('id').where('name', '=', name))[0]?.id
}

/** The key of a design, which is entered when it is not there yet. */
export function enteredDesign(database: Database, { name, made }: { readonly name: string; readonly made: string }): number {
  const there = designId(database, name)
  if (there !== undefined) return there
  change(database, tables.insertInto('designs').values({ name, made }))
  return enteredDesign(database, { name, made })
}
