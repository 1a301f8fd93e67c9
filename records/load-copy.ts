/**
 * Takes the file of a store into memory, by way of a copy that is opened like the store itself: an earlier schema is migrated there,
 * and the file is left as it is. For stores that may only be read, and for stores from elsewhere.
 */
import { chmodSync, copyFileSync, existsSync, mkdtempSync, rmSync, statSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Database } from 'better-sqlite3'
import { type Opening, openDatabase } from './open-database.ts'
import { onFile, StoreFault, troubles } from './store-fault.ts'

/**
 * @returns a store in memory that nothing can be written to
 * @throws StoreFault when the file is missing, empty, no store, damaged, or of a later version
 */
export function loadCopy(opening: Opening): Database {
  const folder = onFile(tmpdir(), () => mkdtempSync(join(tmpdir(), 'fingerwright-store-')))
  try {
    const copy = join(folder, 'store.sqlite')
    onFile(opening.file, () => copyStore(opening.file, copy))
    return inMemory({ ...opening, file: copy })
  } catch (error) {
    // Whoever reads the message knows the file, not its copy.
    throw error instanceof StoreFault ? new StoreFault(opening.file, error.problem, error) : error
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

/** The write-ahead log holds what has not yet found its way into the file. */
function copyStore(file: string, copy: string): void {
  if (statSync(file).size === 0) throw new StoreFault(file, { ...troubles.noStore, place: '', found: 'an empty file' })
  for (const ending of ['', '-wal']) {
    if (!existsSync(`${file}${ending}`)) continue
    copyFileSync(`${file}${ending}`, `${copy}${ending}`)
    chmodSync(`${copy}${ending}`, 0o600)
  }
}

function inMemory(opening: Opening): Database {
  const { Database, file } = opening
  const { database } = openDatabase(opening)
  try {
    return onFile(file, () => {
      const state = database.pragma('integrity_check', { simple: true })
      const orphans = database.pragma('foreign_key_check') as readonly unknown[]
      if (state !== 'ok' || orphans.length > 0) throw new StoreFault(file, { ...troubles.broken, place: '' })
      // In memory there is no room for a write-ahead log.
      database.pragma('journal_mode = delete')
      const loaded = new Database(database.serialize())
      loaded.pragma('query_only = on')
      return loaded
    })
  } finally {
    database.close()
  }
}
