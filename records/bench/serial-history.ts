import type { Database } from 'better-sqlite3'
import { designId } from '../design-id.ts'
import { rowsOf, tables } from '../query.ts'
import type { SerialHistory } from './bench-book.ts'
import { fieldLogOf } from './field-log.ts'
import { articleNamed, type Owner } from './look-up.ts'
import { certificatesOf, decisionRows, signOffRows } from './papers-of.ts'
import { planOf } from './read-book.ts'
import { readingsOf } from './readings-of.ts'
import { testOfRow, testRows } from './tests-of.ts'
import { withoutNulls } from './without-nulls.ts'

/** Everything about one serial number of a design. */
export function serialHistory(
  database: Database,
  { name, serial }: { readonly name: string; readonly serial: string },
): SerialHistory | undefined {
  const design = designId(database, name)
  if (design === undefined) return undefined
  const owner = { database, design }
  const article = articleNamed(owner, serial)
  if (article === undefined) return undefined
  const [entered] = rowsOf(
    database,
    tables
      .selectFrom('articles')
      .innerJoin('lots', 'lots.id', 'articles.lot')
      .select(['lots.name as lot', 'lots.revision', 'articles.piece', 'articles.who', 'articles.made'])
      .where('articles.id', '=', article.id),
  )
  const plan = planOf(database, { name, revision: entered.revision }) ?? []
  return {
    serial,
    ...withoutNulls(entered),
    plan,
    readings: readingsOf(database, { article: article.id }).map(({ serial: _, ...reading }) => reading),
    ...deedsOf(owner, article.id),
    ...papersOf(owner, { article: article.id, lot: article.lot }),
  }
}

/** Tests, decisions, and what came back of an article. */
function deedsOf({ database }: Owner, article: number) {
  return {
    tests: rowsOf(database, testRows().where('bench_tests.article', '=', article)).map(testOfRow),
    field: fieldLogOf(database, { article }),
    decisions: rowsOf(database, decisionRows().where('decisions.article', '=', article)).map(({ article: _, ...rest }) =>
      withoutNulls(rest),
    ),
  }
}

/** Certificates of its lot; sign-offs of the lot as a whole, and of the article. */
function papersOf({ database }: Owner, { article, lot }: { readonly article: number; readonly lot: number }) {
  const signOffs = signOffRows()
    .where('sign_offs.lot', '=', lot)
    .where((one) => one.or([one('sign_offs.article', 'is', null), one('sign_offs.article', '=', article)]))
  return { certificates: certificatesOf(database, lot), signOffs: rowsOf(database, signOffs).map(withoutNulls) }
}
