import type { Database } from 'better-sqlite3'
import { readDesign } from '../../engine/index.ts'
import { rowsOf, tables } from '../query.ts'
import { revisionNumbered } from '../revisions.ts'
import type { KeptField } from './bench-book.ts'
import { notThere, type Owner } from './look-up.ts'
import { withoutNulls } from './without-nulls.ts'

/** Returns and complaints, oldest first: of a design by its name, or of one article. */
export function fieldLogOf(
  database: Database,
  of: { readonly name: string; readonly article?: never } | { readonly article: number; readonly name?: never },
): readonly KeptField[] {
  const all = tables
    .selectFrom('field_log')
    .innerJoin('articles', 'articles.id', 'field_log.article')
    .innerJoin('lots', 'lots.id', 'articles.lot')
    .innerJoin('designs', 'designs.id', 'articles.design')
    .leftJoin('field_log as later', 'later.corrects', 'field_log.id')
    .select(['field_log.id', 'articles.serial', 'lots.name as lot', 'lots.revision'])
    .select(['field_log.sort', 'field_log.came', 'field_log.told', 'field_log.found', 'field_log.harm', 'field_log.risks'])
    .select(['field_log.contact', 'field_log.contacts_in as contactsIn', 'field_log.who', 'field_log.made'])
    .select(['field_log.corrects', 'field_log.reason', 'later.id as correctedBy'])
    .orderBy('field_log.id')
  const asked = of.name === undefined ? all.where('field_log.article', '=', of.article) : all.where('designs.name', '=', of.name)
  return rowsOf(database, asked).map(({ risks, ...rest }) => ({ ...withoutNulls(rest), risks: JSON.parse(risks) }))
}

/**
 * Risks are those of the revision of the set, or of the newest one: a risk that was seen first in the field is written into the design first.
 *
 * @throws Misfit when one is in neither
 */
export function refuseUnknownRisks(
  owner: Owner,
  { serial, risks }: { readonly serial: string; readonly risks: readonly string[] },
): void {
  if (risks.length === 0) return
  const { database, design } = owner
  const query = tables
    .selectFrom('lots')
    .innerJoin('articles', 'articles.lot', 'lots.id')
    .select('lots.revision')
    .where('lots.design', '=', design)
    .where('articles.serial', '=', serial)
  const newest = tables
    .selectFrom('revisions')
    .select(({ fn }) => fn.max('number').as('revision'))
    .where('design', '=', design)
  const revisions = [...rowsOf(database, query), ...rowsOf(database, newest)].map(({ revision }) => revision)
  const texts = [...new Set(revisions)].map((number) => revisionNumbered(database, { design, number }) ?? '')
  const known = texts.flatMap((text) => readDesign(text).value?.risks ?? []).map(({ id }) => id)
  const unknown = risks.find((risk) => !known.includes(risk))
  if (unknown === undefined) return
  const needed = known.length === 0 ? 'no risk: the design names none' : `one of ${[...new Set(known)].join(', ')}, or none`
  throw notThere(`risk ${unknown}`, needed, 'Where no risk has it, write it into the design and keep a revision first.')
}
