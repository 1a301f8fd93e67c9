import type { Database } from 'better-sqlite3'
import { sql } from 'kysely'
import { designId, enteredDesign, nameProblem } from './design-id.ts'
import { change, rowsOf, tables } from './query.ts'
import type { NewRevision, Revision, RevisionEntry, Saved } from './store.ts'

const COLUMNS = ['number', 'text', 'engine', 'figures', 'findings', 'problems', 'who', 'why', 'saved'] as const

/** One revision of a design, or the newest; undefined when there is none. */
export function revisionOf(database: Database, name: string, number: number | 'newest'): Revision | undefined {
  const design = designId(database, name)
  if (design === undefined) return undefined
  const all = tables.selectFrom('revisions').select(COLUMNS).where('design', '=', design)
  const one = number === 'newest' ? all.orderBy('number', 'desc').limit(1) : all.where('number', '=', number)
  return rowsOf(database, one)[0]
}

/** The text of a revision of a design by its key; undefined when there is none. */
export function revisionNumbered(
  database: Database,
  { design, number }: { readonly design: number; readonly number: number },
): string | undefined {
  const query = tables.selectFrom('revisions').select('text').where('design', '=', design).where('number', '=', number)
  return rowsOf(database, query)[0]?.text
}

/** Every revision of a design, oldest first. */
export function wholeRevisions(database: Database, name: string): readonly Revision[] {
  const design = designId(database, name)
  if (design === undefined) return []
  return rowsOf(database, tables.selectFrom('revisions').select(COLUMNS).where('design', '=', design).orderBy('number'))
}

/** The revisions of a design without their texts and figures, oldest first. */
export function revisionEntries(database: Database, name: string): readonly RevisionEntry[] {
  const query = tables
    .selectFrom('revisions')
    .innerJoin('designs', 'designs.id', 'revisions.design')
    .where('designs.name', '=', name)
    .select(['number', 'saved', 'who', 'why', 'engine'])
    .select([
      sql<string>`(select json_group_array(value ->> 'verdict') from json_each(findings))`.as('verdicts'),
      sql<number>`json_array_length(problems)`.as('problems'),
    ])
    .orderBy('number')
  return rowsOf(database, query).map((row) => ({ ...row, verdicts: JSON.parse(row.verdicts) }))
}

/** A revision to be kept, and the moment. */
export interface KeptRevision {
  readonly name: string
  readonly revision: NewRevision
  readonly saved: string
}

/** Keeps a revision under the next number, within a transaction of the caller. */
export function addRevision(database: Database, { name, revision, saved }: KeptRevision): number {
  const design = enteredDesign(database, { name, made: saved })
  const number = (revisionOf(database, name, 'newest')?.number ?? 0) + 1
  change(database, tables.insertInto('revisions').values({ ...revision, design, number, saved }))
  return number
}

/**
 * Keeps a revision, unless the newest one has the same text, engine, who and why: then the save was only sent twice.
 *
 * @param version see `Store.keepRevision`
 */
export function keepRevision(
  database: Database,
  { version, ...kept }: KeptRevision & { readonly version: number | undefined },
): Saved<{ readonly number: number }> {
  const wrong = nameProblem(kept.name)
  if (wrong !== undefined) return { refused: wrong }
  const draft = draftStand(database, kept.name)
  if (version !== undefined && version !== draft.version) return { newer: draft }
  const newest = revisionOf(database, kept.name, 'newest')
  const isTwice = newest !== undefined && SAYS.every((key) => newest[key] === kept.revision[key])
  return { kept: { number: isTwice ? newest.number : addRevision(database, kept) } }
}

const SAYS = ['text', 'engine', 'who', 'why'] as const

function draftStand(database: Database, name: string): { readonly version: number; readonly text: string } {
  const query = tables
    .selectFrom('drafts')
    .innerJoin('designs', 'designs.id', 'drafts.design')
    .where('designs.name', '=', name)
    .select(['version', 'text'])
  return rowsOf(database, query)[0] ?? { version: 0, text: '' }
}
