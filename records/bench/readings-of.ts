import type { Database } from 'better-sqlite3'
import { rowsOf, tables } from '../query.ts'
import type { LotReading } from './bench-book.ts'
import { withoutNulls } from './without-nulls.ts'

/**
 * The readings of one article, or of a whole lot, oldest first. One that came with a store from elsewhere stands where it was made, so that the
 * newest is the newest wherever it was entered.
 */
export function readingsOf(
  database: Database,
  of: { readonly article: number; readonly lot?: never } | { readonly lot: number; readonly article?: never },
): readonly LotReading[] {
  const all = tables
    .selectFrom('readings')
    .innerJoin('articles', 'articles.id', 'readings.article')
    .leftJoin('gauges', 'gauges.id', 'readings.gauge')
    .leftJoin('imports', 'imports.id', 'readings.import')
    .leftJoin('readings as later', 'later.corrects', 'readings.id')
    .selectAll('readings')
    .select(['articles.serial', 'gauges.name as gauge', 'imports.file', 'later.id as correctedBy'])
    .orderBy('readings.made')
    .orderBy('readings.id')
  const asked = of.lot === undefined ? all.where('readings.article', '=', of.article) : all.where('articles.lot', '=', of.lot)
  return rowsOf(database, asked).map((row) => {
    const { article: _, import: __, least, most, at_x_mm, at_y_mm, uncertainty_mm, measured_by, measured_on, ...rest } = row
    const size = least === null || most === null ? {} : { value: { least, most } }
    const at =
      at_x_mm === null || at_y_mm === null ? {} : { value: { x_mm: at_x_mm, y_mm: at_y_mm, uncertainty_mm: uncertainty_mm ?? 0 } }
    return { ...withoutNulls({ ...rest, by: measured_by, date: measured_on }), ...size, ...at }
  })
}
