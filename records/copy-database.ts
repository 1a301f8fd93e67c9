import { closeSync, fsyncSync, openSync, rmSync } from 'node:fs'
import { dirname } from 'node:path'
import type { Database } from 'better-sqlite3'
import { onFile } from './store-fault.ts'

/**
 * Writes a store as one file, as it stands at this moment, and waits until it is on the disk. Half a copy is taken away again.
 *
 * @throws StoreFault when the file exists already or cannot be written
 */
export function copyDatabase(database: Database, file: string): void {
  onFile(file, () => closeSync(openSync(file, 'wx', 0o600)))
  try {
    onFile(file, () => {
      database.prepare('vacuum into ?').run(file)
      sync(file)
      sync(dirname(file))
    })
  } catch (error) {
    rmSync(file, { force: true })
    throw error
  }
}

/** SQLite itself does not wait for the disk here. */
function sync(place: string): void {
  const opened = openSync(place, 'r')
  try {
    fsyncSync(opened)
  } finally {
    closeSync(opened)
  }
}
