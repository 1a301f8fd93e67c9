import type { Database } from 'better-sqlite3'
import { designId } from '../design-id.ts'
import { rowsOf, tables } from '../query.ts'
import type { SetOfLot } from './bench-book.ts'
import { certificatesOf, decisionRows, signOffRows } from './papers-of.ts'
import { readingsOf } from './readings-of.ts'
import { withoutNulls } from './without-nulls.ts'

/** Everything that sets of a lot are judged by, in the order in which they came; undefined for a lot that is not there. */
export function setsOf(
  database: Database,
  { name, lot }: { readonly name: string; readonly lot: string },
): readonly SetOfLot[] | undefined {
  const design = designId(database, name)
  if (design === undefined) return undefined
  const lots = tables.selectFrom('lots').select('id').where('design', '=', design).where('name', '=', lot)
  const [found] = rowsOf(database, lots)
  if (found === undefined) return undefined
  const { id } = found
  const articles = tables.selectFrom('articles').select(['id', 'serial']).where('lot', '=', id).orderBy('id')
  const decisions = decisionRows().innerJoin('articles', 'articles.id', 'decisions.article').where('articles.lot', '=', id)
  const [readings, decided] = [readingsOf(database, { lot: id }), rowsOf(database, decisions)]
  const signOffs = rowsOf(database, signOffRows().where('sign_offs.lot', '=', id)).map(withoutNulls)
  const certificates = certificatesOf(database, id)
  return rowsOf(database, articles).map(({ id: article, serial }) => ({
    serial,
    readings: readings.flatMap(({ serial: of, ...reading }) => (of === serial ? [reading] : [])),
    certificates,
    decisions: decided.flatMap(({ article: of, ...rest }) => (of === article ? [withoutNulls(rest)] : [])),
    signOffs: signOffs.filter(({ serial: of }) => of === undefined || of === serial),
  }))
}
