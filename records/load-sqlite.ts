import type Database from 'better-sqlite3'
import { StoreFault } from './store-fault.ts'

/**
 * Loads SQLite when a store is opened and not before: a verdict on a file does not wait for it.
 *
 * @throws StoreFault when the native package was not built for this machine
 */
export async function loadSqlite(): Promise<typeof Database> {
  try {
    const loaded = (await import('better-sqlite3')).default
    // The native part is only looked for when a store is opened.
    new loaded(':memory:').close()
    return loaded
  } catch (error) {
    throw new StoreFault('better-sqlite3', {
      code: 'no database',
      place: '',
      found: `a package that does not load: ${error instanceof Error ? error.message.split('\n')[0] : String(error)}`,
      needed: 'its native part, built for this machine and this version of Node',
      wayOut: 'Install python3, make and a C++ compiler (g++ or clang), then run: npm rebuild better-sqlite3',
    })
  }
}
