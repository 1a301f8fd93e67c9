/** TEST SUPPORT. The bytes of a store with nothing in it. */
import Database from 'better-sqlite3'
import { migrate } from '../migrate.ts'

/** A whole store file. */
export function emptyStoreBytes(): Uint8Array {
  const database = new Database(':memory:')
  migrate(database)
  const bytes = database.serialize()
  database.close()
  return bytes
}
