import type { Database } from 'better-sqlite3'
import { designId } from '../design-id.ts'
import { rowsOf, tables } from '../query.ts'
import type { KeptImport, LotEntry } from './bench-book.ts'
import { withoutNulls } from './without-nulls.ts'

/** The lots of a design with their serial numbers and imports, oldest first. */
export function lotsOf(database: Database, name: string): readonly LotEntry[] {
  const design = designId(database, name)
  if (design === undefined) return []
  const lots = tables.selectFrom('lots').selectAll().where('design', '=', design).orderBy('id')
  const articles = tables
    .selectFrom('articles')
    .select(['id', 'lot', 'serial', 'piece'])
    .where('design', '=', design)
    .orderBy('id')
  const counts = new Map(rowsOf(database, standingCounts(design)).map(({ article, count }) => [article, count]))
  const found = rowsOf(database, articles).map(({ id, ...rest }) => ({ ...rest, readings: counts.get(id) ?? 0 }))
  const imports = importsOf(database, design)
  return rowsOf(database, lots).map(({ id, name: lot, revision, note, who, made }) => {
    const serials = found.flatMap(({ lot: of, ...rest }) => (of === id ? [withoutNulls(rest)] : []))
    const own = imports.flatMap(({ lot: of, ...rest }) => (of === id ? [rest] : []))
    return { lot, revision, ...withoutNulls({ note }), who, made, serials, imports: own }
  })
}

/** How many readings of each article stand. */
function standingCounts(design: number) {
  return tables
    .selectFrom('readings')
    .innerJoin('articles', 'articles.id', 'readings.article')
    .leftJoin('reading_corrections', 'reading_corrections.reading', 'readings.id')
    .select(['readings.article', ({ fn }) => fn.countAll<number>().as('count')])
    .where('articles.design', '=', design)
    .where('reading_corrections.correction', 'is', null)
    .where(({ or, eb }) => or([eb('readings.least', 'is not', null), eb('readings.at_x_mm', 'is not', null)]))
    .where(({ or, eb, selectFrom }) =>
      or([eb('readings.import', 'is', null), eb('readings.import', 'not in', selectFrom('withdrawals').select('import'))]),
    )
    .groupBy('readings.article')
}

function importsOf(database: Database, design: number): readonly (KeptImport & { readonly lot: number })[] {
  const query = tables
    .selectFrom('imports')
    .innerJoin('lots', 'lots.id', 'imports.lot')
    .leftJoin('withdrawals', 'withdrawals.import', 'imports.id')
    .select(['imports.id', 'imports.lot', 'imports.file', 'imports.who', 'imports.made'])
    .select(({ selectFrom, fn }) =>
      selectFrom('readings')
        .whereRef('readings.import', '=', 'imports.id')
        .select(fn.countAll<number>().as('count'))
        .as('readings'),
    )
    .select(['withdrawals.reason', 'withdrawals.who as withdrawn_by', 'withdrawals.made as withdrawn_on'])
    .where('lots.design', '=', design)
    .groupBy('imports.id')
    .orderBy('imports.id')
  return rowsOf(database, query).map(({ reason, withdrawn_by: who, withdrawn_on: made, readings, ...rest }) => ({
    ...rest,
    readings: readings ?? 0,
    ...(reason !== null && who !== null && made !== null && { withdrawn: { reason, who, made } }),
  }))
}
