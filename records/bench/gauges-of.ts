import type { Database } from 'better-sqlite3'
import { rowsOf, tables } from '../query.ts'
import type { Gauge } from './bench-book.ts'
import { withoutNulls } from './without-nulls.ts'

/** Calibrations with their corrections. A correction stands where what it corrects stood, so that it does not pass for a later calibration. */
const calibrationRows = () =>
  tables
    .selectFrom('gauges')
    .innerJoin('calibrations', 'calibrations.id', 'gauges.id')
    .innerJoin('gauges as first', 'first.id', 'calibrations.first')
    .leftJoin('gauges as later', 'later.corrects', 'gauges.id')
    .select(['gauges.id', 'gauges.name as gauge', 'gauges.resolution_mm', 'gauges.uncertainty_mm', 'gauges.calibrated'])
    .select(['gauges.who', 'gauges.made', 'gauges.corrects', 'gauges.reason', 'later.id as correctedBy'])
    .orderBy('gauges.name')
    .orderBy('first.made')
    .orderBy('first.id')
    .orderBy('gauges.id')

/** Every calibration, those that were corrected too. */
export function calibrationsOf(database: Database): readonly Gauge[] {
  return rowsOf(database, calibrationRows()).map(withoutNulls)
}

/** Every gauge as it stands since its last calibration, by name. */
export function gaugesOf(database: Database): readonly Gauge[] {
  const standing = calibrationsOf(database).filter(({ correctedBy }) => correctedBy === undefined)
  return standing.filter(({ gauge }, index) => standing[index + 1]?.gauge !== gauge)
}
