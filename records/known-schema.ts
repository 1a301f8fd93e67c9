import type DatabaseClass from 'better-sqlite3'
import type { Database } from 'better-sqlite3'
import { APPLICATION, migrate, schemaOf, schemaText } from './migrate.ts'
import { migrations } from './migrations.ts'
import { StoreFault, troubles } from './store-fault.ts'

/** A database that was opened but not yet believed. */
export interface Unknown {
  readonly Database: typeof DatabaseClass
  readonly file: string
  readonly database: Database
}

/**
 * Looks whose file it is before anything is written to it. Every table, index and trigger must be that of its schema to the letter, so
 * that a file from elsewhere brings no statements of its own.
 *
 * @returns the number of its schema; 0 for an empty file
 * @throws StoreFault when it is no store, belongs to a later version, or was altered
 */
export function knownSchema({ Database, file, database }: Unknown): number {
  const schema = schemaOf(database)
  const owner = database.pragma('application_id', { simple: true })
  const found = schemaText(database)
  if (owner === 0 && schema === 0 && found === '') return 0
  if (owner !== APPLICATION) throw new StoreFault(file, { ...troubles.noStore, place: '' })
  refuseLater(file, schema)
  const fresh = new Database(':memory:')
  migrate(fresh, migrations.slice(0, schema))
  const expected = schemaText(fresh)
  fresh.close()
  if (expected !== found)
    throw new StoreFault(file, { ...troubles.broken, place: '', found: 'tables that are not those of a store' })
  return schema
}

/** @throws StoreFault when a store was made, or meanwhile migrated, by a version of the program that knows more schemas */
export function refuseLater(file: string, schema: number): void {
  if (schema <= migrations.length) return
  throw new StoreFault(file, {
    code: 'later version',
    place: '',
    found: `a store of schema ${schema}, from a later version of Fingerwright`,
    needed: `a store of schema ${migrations.length} or earlier`,
    wayOut: 'Update Fingerwright and start it again, or name another folder with --store; the file is left as it is.',
  })
}
