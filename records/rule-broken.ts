import type { Database } from 'better-sqlite3'

/** Thrown in a piece of work that is to be taken back as a whole. */
export class RuleBroken extends Error {}

/** Whether SQLite refused a row because of a rule of the tables; which one it was is in its own words. */
export function isRuleBroken(error: unknown): error is Error {
  if (error instanceof RuleBroken) return true
  return error instanceof Error && 'code' in error && String(error.code).startsWith('SQLITE_CONSTRAINT')
}

/** Does several things, all or none. @returns undefined where one of them breaks a rule of the tables; then none was done */
export function unlessRuleBroken<Result>(database: Database, work: () => Result): Result | undefined {
  try {
    return database.transaction(work)()
  } catch (error) {
    if (!isRuleBroken(error)) throw error
    return undefined
  }
}
