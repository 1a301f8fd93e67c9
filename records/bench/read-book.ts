import type { Database } from 'better-sqlite3'
import type { Characteristic } from '../../engine/index.ts'
import { rowsOf, tables } from '../query.ts'
import type { LotReading, Photo } from './bench-book.ts'
import { readingsOf } from './readings-of.ts'

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
