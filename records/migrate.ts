/**
 * The schema of a store: which it has, and the way to the newest one. SQLite keeps two numbers in the head of a file, inside of its
 * transactions: whose file it is, and which schema it has. So a store is at one schema or at the next, never between them.
 */
import type { Database } from 'better-sqlite3'
import { migrations } from './migrations.ts'

/** Marks a file as a store of Fingerwright: `FWRT` in ASCII. */
export const APPLICATION = 0x46_57_52_54

/** Number of the schema a store has; 0 for one that was just made. */
export function schemaOf(database: Database): number {
  return database.pragma('user_version', { simple: true }) as number
}

/**
 * Brings a store to the newest schema in one transaction. When another program was faster, there is nothing left to do.
 *
 * @param steps all schemas, the first one first
 */
export function migrate(database: Database, steps: readonly string[] = migrations): void {
  const climb = database.transaction(() => {
    for (const step of steps.slice(schemaOf(database))) database.exec(step)
    const orphans = database.pragma('foreign_key_check') as readonly unknown[]
    if (orphans.length > 0) throw new Error(`the migration leaves ${orphans.length} rows without what they belong to`)
    database.pragma(`application_id = ${APPLICATION}`)
    database.pragma(`user_version = ${Math.max(steps.length, schemaOf(database))}`)
  })
  climb.immediate()
}

/** What the tables, indexes and triggers of a store are made of, in a fixed order: two stores of one schema agree to the letter. */
export function schemaText(database: Database): string {
  const made = database.prepare<[], { sql: string | null }>('select sql from sqlite_schema order by type, name').all()
  return made.map(({ sql }) => sql ?? '').join('\n')
}
