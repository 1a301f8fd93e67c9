import type { Database } from 'better-sqlite3'
import { rowsOf, tables } from '../query.ts'
import type { TestOfSet } from './bench-book.ts'
import { withoutNulls } from './without-nulls.ts'

/** Every bench test, oldest first, each with the one that corrects it. */
export const testRows = () =>
  tables
    .selectFrom('bench_tests')
    .leftJoin('bench_tests as later', 'later.corrects', 'bench_tests.id')
    .select(['bench_tests.id', 'bench_tests.test', 'bench_tests.value', 'bench_tests.outcome', 'bench_tests.tested'])
    .select(['bench_tests.figure', 'bench_tests.uncertainty', 'bench_tests.rig', 'bench_tests.note', 'bench_tests.photo'])
    .select([
      'bench_tests.photo_type',
      'bench_tests.who',
      'bench_tests.made',
      'bench_tests.corrects',
      'bench_tests.reason',
      'later.id as correctedBy',
    ])
    .orderBy('bench_tests.id')

/** A row as it is told: of a photo only that there is one. */
export function testOfRow<Row extends { readonly photo_type: string | null }>({ photo_type, ...rest }: Row) {
  return { ...withoutNulls(rest), hasPhoto: photo_type !== null }
}

/** Every bench test of a design, oldest first, with the set that it was of. */
export function testsOf(database: Database, name: string): readonly TestOfSet[] {
  const query = testRows()
    .innerJoin('articles', 'articles.id', 'bench_tests.article')
    .innerJoin('lots', 'lots.id', 'articles.lot')
    .innerJoin('designs', 'designs.id', 'articles.design')
    .select(['articles.serial', 'lots.name as lot', 'lots.revision'])
    .where('designs.name', '=', name)
  return rowsOf(database, query).map(testOfRow)
}
