/** TEST SUPPORT. Stores of earlier schemas, brought back from the statements that are kept of them. */
import { readFileSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { storeFolder } from './store-bench.ts'

/** Puts a store of a schema into a folder, in the place of what is there; returns the folder. */
export function keptStore(schema: number, folder = storeFolder()): string {
  const file = join(folder, 'store.sqlite')
  for (const ending of ['', '-wal', '-shm']) rmSync(`${file}${ending}`, { force: true })
  const database = new Database(file)
  const statements = readFileSync(join(import.meta.dirname, `../kept/schema-${schema}.sql`), 'utf8')
  // In one transaction, because each of a hundred statements would wait for the disk.
  database.exec(`begin;\n${statements}\ncommit;`)
  // As every store was left behind by the program.
  database.pragma('journal_mode = wal')
  database.close()
  return folder
}
