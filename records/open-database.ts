/**
 * Opens the file of a store: asks whose it is, backs it up and migrates it, and sets what holds for every connection.
 *
 * `synchronous = full`, because SQLite with a write-ahead log would otherwise wait for the disk only now and then: a power cut could
 * take back a save that was acknowledged. It costs a save a few milliseconds, and nobody saves more often than once a second.
 */
import type DatabaseClass from 'better-sqlite3'
import type { Database } from 'better-sqlite3'
import { copyDatabase } from './copy-database.ts'
import { knownSchema } from './known-schema.ts'
import { storeLimits } from './limits.ts'
import { migrate } from './migrate.ts'
import { migrations } from './migrations.ts'
import { onFile, StoreFault, troubles } from './store-fault.ts'

/** SQLite as it was loaded, the file, and the moment, which goes into the name of a backup. */
export interface Opening {
  readonly Database: typeof DatabaseClass
  readonly file: string
  readonly now: () => Date
}

/** An open store of the newest schema, and what ought to be told about it, in sentences. */
export interface Opened {
  readonly database: Database
  readonly notes: readonly string[]
}

/**
 * Opens a store, or makes one of an empty or missing file.
 *
 * @throws StoreFault when the file is no store, belongs to a later version, is damaged, or cannot be read and written
 */
export function openDatabase({ Database, file, now }: Opening): Opened {
  return onFile(file, () => {
    const database = new Database(file, { timeout: storeLimits.wait_ms })
    try {
      database.pragma('trusted_schema = off')
      database.pragma('synchronous = full')
      const schema = knownSchema({ Database, file, database })
      const isOlder = schema > 0 && schema < migrations.length
      if (isOlder) refuseOrphans(file, database)
      const copy = isOlder ? copyBeside(file, { schema, now }) : undefined
      if (copy !== undefined) copyDatabase(database, copy)
      if (schema < migrations.length) migrate(database)
      database.pragma('journal_mode = wal')
      database.pragma('foreign_keys = on')
      tryToWrite(database)
      return { database, notes: copy === undefined ? [] : [broughtUp(schema, copy)] }
    } catch (error) {
      database.close()
      throw error
    }
  })
}

/** Rows without what they belong to are no work of ours: such a store is left at its schema. */
function refuseOrphans(file: string, database: Database): void {
  const orphans = database.pragma('foreign_key_check') as readonly unknown[]
  if (orphans.length > 0) throw new StoreFault(file, { ...troubles.broken, place: '' })
}

/** A file that may only be read shows it here and not at the first save: SQLite looks when a page is written, even one that is given up. */
function tryToWrite(database: Database): void {
  database.exec('begin immediate')
  try {
    database.pragma(`user_version = ${migrations.length}`)
  } finally {
    if (database.inTransaction) database.exec('rollback')
  }
}

/** Where a store is copied to before it is migrated: beside it, with the schema and the moment in the name. */
function copyBeside(file: string, { schema, now }: Pick<Opening, 'now'> & { readonly schema: number }): string {
  const moment = now().toISOString().replaceAll(':', '-')
  return file.replace(/(\.sqlite)?$/, `-schema-${schema}-${moment}.sqlite`)
}

function broughtUp(schema: number, copy: string): string {
  return `The store was brought from schema ${schema} to ${migrations.length}. As it was before, it is kept at ${copy}.`
}
