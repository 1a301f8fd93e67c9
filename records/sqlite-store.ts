import type { Database } from 'better-sqlite3'
import type { BenchBook } from './bench/bench-book.ts'
import { fieldLogOf } from './bench/field-log.ts'
import { calibrationsOf, gaugesOf } from './bench/gauges-of.ts'
import { keepEntries } from './bench/keep-entries.ts'
import { lotsOf } from './bench/lots-of.ts'
import { lotReadings, photoOf, planOf } from './bench/read-book.ts'
import { serialHistory } from './bench/serial-history.ts'
import { setsOf } from './bench/sets-of.ts'
import { testsOf } from './bench/tests-of.ts'
import { bringIn, historiesIn } from './bring-in.ts'
import { copyDatabase } from './copy-database.ts'
import { designEntries } from './designs.ts'
import { draftOf, keepDraft } from './drafts.ts'
import { refuseLater } from './known-schema.ts'
import { loadCopy } from './load-copy.ts'
import { schemaOf } from './migrate.ts'
import { type Opening, openDatabase } from './open-database.ts'
import { keepRevision, revisionEntries, revisionOf } from './revisions.ts'
import type { Store } from './store.ts'
import { onFile, type StoreFault } from './store-fault.ts'
import { unkept } from './unkept-store.ts'

/**
 * The store in a file; the file is made when it is not there.
 *
 * @throws StoreFault when it cannot be opened for writing
 */
export function sqliteStore(opening: Opening): Store {
  const { database, notes } = openDatabase(opening)
  return { ...storeOn(database, opening), notes }
}

/**
 * A store that may only be read: everything in it can be seen, and every save says why it is not kept.
 *
 * @throws StoreFault when it cannot be read either
 */
export function copiedStore(opening: Opening, why: StoreFault): Store {
  return unkept(storeOn(loadCopy(opening), opening), why)
}

/** Reads and writes; a write is one transaction, which no other program can come between. */
function storeOn(database: Database, opening: Opening): Store {
  const { file, now } = opening
  const read = <Result>(work: () => Result): Result => onFile(file, work)
  const write = <Result>(work: (saved: string) => Result): Result =>
    onFile(file, () =>
      database
        .transaction(() => {
          refuseLater(file, schemaOf(database))
          return work(now().toISOString())
        })
        .immediate(),
    )
  return {
    file,
    notes: [],
    designs: () => read(() => designEntries(database)),
    draft: (name) => read(() => draftOf(database, name)),
    revisions: (name) => read(() => revisionEntries(database, name)),
    revision: (name, number) => read(() => revisionOf(database, name, number)),
    keepDraft: (name, change) => write((saved) => keepDraft(database, { name, change, saved })),
    keepRevision: (name, revision, version) => write((saved) => keepRevision(database, { name, revision, version, saved })),
    copyTo: (copy) => copyDatabase(database, copy),
    bringIn: (other) => {
      const histories = historiesIn({ ...opening, file: other })
      return write(() => histories.map((history) => bringIn(database, { other: history, file: other })))
    },
    bench: benchBookOn(database, { read, write }),
    close: () => {
      database.close()
    },
  }
}

/** How a store reads, and how it writes with the moment of it. */
interface Ways {
  readonly read: <Result>(work: () => Result) => Result
  readonly write: <Result>(work: (made: string) => Result) => Result
}

function benchBookOn(database: Database, { read, write }: Ways): BenchBook {
  return {
    gauges: () => read(() => gaugesOf(database)),
    calibrations: () => read(() => calibrationsOf(database)),
    sets: (name, lot) => read(() => setsOf(database, { name, lot })),
    lots: (name) => read(() => lotsOf(database, name)),
    plan: (name, revision) => read(() => planOf(database, { name, revision })),
    readings: (name, lot) => read(() => lotReadings(database, { name, lot })),
    serial: (name, serial) => read(() => serialHistory(database, { name, serial })),
    field: (name) => read(() => fieldLogOf(database, { name })),
    tests: (name) => read(() => testsOf(database, name)),
    photo: (name, id) => read(() => photoOf(database, { name, id })),
    keepEntries: (name, asked) => write((made) => keepEntries(database, { name, asked, made })),
  }
}
