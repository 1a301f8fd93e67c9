import type { Database } from 'better-sqlite3'
import { draftOf } from './drafts.ts'
import { rowsOf, tables } from './query.ts'
import { revisionEntries, wholeRevisions } from './revisions.ts'
import type { DesignEntry, History } from './store.ts'

/** Every design of the store, in the order of their names. */
export function designEntries(database: Database): readonly DesignEntry[] {
  const query = tables
    .selectFrom('designs')
    .leftJoin('drafts', 'drafts.design', 'designs.id')
    .select(['name', 'version', 'saved'])
    .orderBy('name')
  return rowsOf(database, query).map(({ name, version, saved }) => {
    const entries = revisionEntries(database, name)
    const newest = entries.at(-1)
    return {
      name,
      revisions: entries.length,
      ...(newest === undefined ? {} : { newest }),
      ...(version === null || saved === null ? {} : { draft: { version, saved } }),
    }
  })
}

/** Everything about one design of the store. */
export function historyOf(database: Database, name: string): History {
  const revisions = wholeRevisions(database, name)
  const draft = draftOf(database, name)
  return { name, revisions, ...(draft === undefined ? {} : { draft }) }
}
