import type { Database } from 'better-sqlite3'
import type { Problem } from '../engine/index.ts'
import { change, rowsOf, tables } from './query.ts'
import { storedName } from './store-rules.ts'

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

/** Why a design cannot be kept under a name; undefined for one that fits. A file may be called anything. */
export function nameProblem(name: string): Problem | undefined {
  const checked = storedName.safeParse(name)
  if (checked.success) return undefined
  const needed = 'a name of letters that can be seen'
  return {
    code: 'name does not fit',
    place: '',
    found: `a name that ${checked.error.issues[0].message}`,
    needed,
    wayOut: 'Rename the file.',
  }
}
