import type { Database } from 'better-sqlite3'
import { sql } from 'kysely'
import { type GaugedValue, recalibrated } from '../../engine/index.ts'
import { rowsOf, tables } from '../query.ts'
import type { LotReading } from './bench-book.ts'
import { withoutNulls } from './without-nulls.ts'

/**
 * The readings of one article, or of a whole lot, oldest first. One that came with a store from elsewhere stands where it was made, so that the
 * newest is the newest wherever it was entered. Where the calibration of its gauge was corrected, a value has the uncertainty that stands.
 */
export function readingsOf(
  database: Database,
  of: { readonly article: number; readonly lot?: never } | { readonly lot: number; readonly article?: never },
): readonly LotReading[] {
  const all = readingRows()
  const asked = of.lot === undefined ? all.where('readings.article', '=', of.article) : all.where('articles.lot', '=', of.lot)
  return rowsOf(database, asked).map((row) => {
    const { article: _, import: __, least, most, at_x_mm, at_y_mm, uncertainty_mm, measured_by, measured_on, ...more } = row
    const { unit, then_mm, now_mm, withdrawn, withdrawn_by, withdrawn_on, ...rest } = more
    const value = gaugedValue({ least, most, at_x_mm, at_y_mm, uncertainty_mm, unit, then_mm, now_mm, typed: rest.uncertainty })
    const taken =
      withdrawn !== null && withdrawn_by !== null && withdrawn_on !== null
        ? { withdrawn: { reason: withdrawn, who: withdrawn_by, made: withdrawn_on } }
        : {}
    return { ...withoutNulls({ ...rest, by: measured_by, date: measured_on }), ...(value && { value }), ...taken }
  })
}

/** Of an import that was withdrawn at two benches one of the reasons is told. */
function readingRows() {
  return tables
    .selectFrom('readings')
    .innerJoin('articles', 'articles.id', 'readings.article')
    .leftJoin('gauges', 'gauges.id', 'readings.gauge')
    .leftJoin('calibrations', 'calibrations.id', 'readings.gauge')
    .leftJoin('gauges as standing', 'standing.id', 'calibrations.stands')
    .leftJoin('imports', 'imports.id', 'readings.import')
    .leftJoin('withdrawals', 'withdrawals.import', 'readings.import')
    .leftJoin('reading_corrections', 'reading_corrections.reading', 'readings.id')
    .selectAll('readings')
    .select(['articles.serial', 'gauges.name as gauge', 'imports.file', 'reading_corrections.correction as correctedBy'])
    .select([
      'standing.calibrated',
      'standing.resolution_mm',
      'gauges.uncertainty_mm as then_mm',
      'standing.uncertainty_mm as now_mm',
      unitWhereRecalibrated.as('unit'),
    ])
    .select(['withdrawals.reason as withdrawn', 'withdrawals.who as withdrawn_by', 'withdrawals.made as withdrawn_on'])
    .groupBy('readings.id')
    .orderBy('readings.made')
    .orderBy('readings.id')
}

/** What a gauge leaves open is a length; the plan is looked into only where it makes a difference. */
const unitWhereRecalibrated = sql<string | null>`case when gauges.uncertainty_mm <> standing.uncertainty_mm then (
  select one.value ->> 'unit' from lots
    join plans on plans.design = lots.design and plans.revision = lots.revision
    join json_each(plans.characteristics) as one
  where lots.id = articles.lot and one.value ->> 'id' = readings.characteristic
) end`

interface KeptValue {
  readonly least: number | null
  readonly most: number | null
  readonly at_x_mm: number | null
  readonly at_y_mm: number | null
  readonly uncertainty_mm: number | null
  /** What the gauge was taken to leave open when it was read, and what it does. */
  readonly then_mm: number | null
  readonly now_mm: number | null
  readonly unit: string | null
  /** An uncertainty of its own, beside which that of the gauge did not count. */
  readonly typed: string | null
}

function gaugedValue(kept: KeptValue): GaugedValue | undefined {
  const { least, most, at_x_mm: x_mm, at_y_mm: y_mm, uncertainty_mm, then_mm, now_mm, unit, typed } = kept
  const size = least === null || most === null ? undefined : { least, most }
  const at = x_mm === null || y_mm === null ? undefined : { x_mm, y_mm, uncertainty_mm: uncertainty_mm ?? 0 }
  const value = size ?? at
  const counts = unit === 'mm' && typed === null && then_mm !== null && now_mm !== null
  return value && counts ? recalibrated(value, { then_mm, now_mm }) : value
}
