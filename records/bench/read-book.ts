import type { Database } from 'better-sqlite3'
import { sql } from 'kysely'
import type { Characteristic } from '../../engine/index.ts'
import { designId } from '../design-id.ts'
import { rowsOf, tables } from '../query.ts'
import type { Gauge, LotEntry, LotReading, Photo } from './bench-book.ts'
import { readingsOf } from './readings-of.ts'
import { withoutNulls } from './without-nulls.ts'

/** Every gauge as it stands since its last calibration, by name. */
export function gaugesOf(database: Database): readonly Gauge[] {
  const query = tables
    .selectFrom('gauges')
    .select(['name as gauge', 'resolution_mm', 'uncertainty_mm', 'calibrated', 'who', 'made'])
    .orderBy('name')
    .orderBy('made')
    .orderBy('id')
  const all = rowsOf(database, query)
  return all.filter(({ gauge }, index) => all[index + 1]?.gauge !== gauge)
}

/** The lots of a design with their serial numbers, oldest first. */
export function lotsOf(database: Database, name: string): readonly LotEntry[] {
  const design = designId(database, name)
  if (design === undefined) return []
  const lots = tables.selectFrom('lots').selectAll().where('design', '=', design).orderBy('id')
  const serials = tables
    .selectFrom('articles')
    .select(['lot', 'serial', 'piece'])
    .select(
      sql<number>`(select count(*) from readings where article = articles.id and coalesce(least, at_x_mm) is not null
        and not exists (select 1 from readings as later where later.corrects = readings.id))`.as('readings'),
    )
    .where('design', '=', design)
    .orderBy('id')
  const found = rowsOf(database, serials)
  return rowsOf(database, lots).map(({ id, name: lot, revision, note, who, made }) => {
    const own = found.flatMap(({ lot: of, ...rest }) => (of === id ? [withoutNulls(rest)] : []))
    return { lot, revision, ...withoutNulls({ note }), who, made, serials: own }
  })
}

/** The frozen plan of a revision. */
export function planOf(
  database: Database,
  { name, revision }: { readonly name: string; readonly revision: number },
): readonly Characteristic[] | undefined {
  const query = tables
    .selectFrom('plans')
    .innerJoin('designs', 'designs.id', 'plans.design')
    .select('characteristics')
    .where('designs.name', '=', name)
    .where('revision', '=', revision)
  const [found] = rowsOf(database, query)
  return found === undefined ? undefined : JSON.parse(found.characteristics)
}

/** Every reading of a lot; undefined for a lot that is not there. */
export function lotReadings(
  database: Database,
  { name, lot }: { readonly name: string; readonly lot: string },
): readonly LotReading[] | undefined {
  const query = tables
    .selectFrom('lots')
    .innerJoin('designs', 'designs.id', 'lots.design')
    .select('lots.id')
    .where('designs.name', '=', name)
    .where('lots.name', '=', lot)
  const [found] = rowsOf(database, query)
  return found && readingsOf(database, { lot: found.id })
}

/** The photo of a bench test; undefined when there is none. */
export function photoOf(database: Database, { name, id }: { readonly name: string; readonly id: number }): Photo | undefined {
  const query = tables
    .selectFrom('bench_tests')
    .innerJoin('articles', 'articles.id', 'bench_tests.article')
    .innerJoin('designs', 'designs.id', 'articles.design')
    .select(['photo_type', 'photo_bytes'])
    .where('designs.name', '=', name)
    .where('bench_tests.id', '=', id)
  const [found] = rowsOf(database, query)
  if (found === undefined || found.photo_bytes === null) return undefined
  return { type: found.photo_type as Photo['type'], bytes: found.photo_bytes }
}
