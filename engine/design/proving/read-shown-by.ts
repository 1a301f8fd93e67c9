import type { Document } from '../document.ts'
import type { Reading } from '../reading.ts'
import type { BenchTest, Demand, ShownBy } from '../sections/proving.ts'

type TypedWay = NonNullable<NonNullable<Document['demands']>[string]['shownBy']>[number]

/** Where ways of showing are read: the reading, and the bench tests that they may name. */
export interface ProvingBench {
  readonly reading: Reading
  readonly tests: readonly BenchTest[]
}

/** Ways in which something is shown; none where nothing is typed. */
export function readShownBy(place: string, typed: readonly TypedWay[] | undefined, bench: ProvingBench): readonly ShownBy[] {
  return (typed ?? []).map((way, index) => readWay(`${place}.${index}`, way, bench))
}

function readWay(place: string, typed: TypedWay, { reading, tests }: ProvingBench): ShownBy {
  if ('share' in typed) return { by: 'share', least_ratio: reading.share(`${place}.share`, typed.share) }
  if ('document' in typed) {
    return { by: 'document', document: reading.text(`${place}.document`, typed.document), isInHand: typed.inHand }
  }
  const test = tests.findIndex(({ id }) => id === typed.test)
  if (test < 0 && !reading.wasTakenOut(`benchTests.${typed.test}`)) {
    reading.unknownName(`${place}.test`, { typed: typed.test, what: 'one of benchTests', known: tests.map(({ id }) => id) })
  }
  return { by: 'test', test }
}

/** Bench tests of a document, in its order. */
export function readBenchTests(reading: Reading): readonly BenchTest[] {
  return Object.entries(reading.document.benchTests ?? {}).map(([id, typed]) => {
    const place = `benchTests.${id}`
    return {
      id,
      sort: typed.sort,
      title: reading.line(`${place}.title`, typed.title),
      passes: reading.text(`${place}.passes`, typed.passes),
      ...(typed.done && { done: readDone(`${place}.done`, typed.done, reading) }),
      ...(typed.inBook && { inBook: readInBook(`${place}.inBook`, typed.inBook, reading) }),
    }
  })
}

type TypedDone = NonNullable<NonNullable<Document['benchTests']>[string]['done']>

function readDone(place: string, typed: TypedDone, reading: Reading): NonNullable<BenchTest['done']> {
  const tried_count = wholeFrom(`${place}.tried`, typed.tried, { reading, least: 1 })
  const failed_count = wholeFrom(`${place}.failed`, typed.failed, { reading, least: 0 })
  if (failed_count > tried_count) {
    const needed = `at most the ${tried_count} that were tried`
    reading.report({ code: 'too large', place: `${place}.failed`, found: String(typed.failed), needed })
  }
  const on = reading.line(`${place}.on`, typed.on)
  if (!/^\d{4}-\d{2}-\d{2}$/.test(on)) {
    reading.report({ code: 'wrong value', place: `${place}.on`, found: on, needed: 'a day such as 2026-11-27' })
  }
  return { on, tried_count, failed_count, record: reading.text(`${place}.record`, typed.record) }
}

type TypedInBook = NonNullable<NonNullable<Document['benchTests']>[string]['inBook']>

function readInBook(place: string, typed: TypedInBook, reading: Reading): NonNullable<BenchTest['inBook']> {
  const force = (key: string, value: string) => reading.above0(`${place}.${key}`, value, 'force')
  if ('holds' in typed) return { test: 'load to hold', least: force('holds', typed.holds) }
  if ('returnsAfter' in typed) return { test: 'return after load', least: force('returnsAfter', typed.returnsAfter) }
  if ('pinches' in typed) return { test: 'pinch force', least: force('pinches', typed.pinches) }
  return { test: 'cycles', least: wholeFrom(`${place}.cycles`, typed.cycles, { reading, least: 1 }) }
}

function wholeFrom(
  place: string,
  typed: string | number,
  { reading, least }: { readonly reading: Reading; readonly least: number },
): number {
  const value = reading.atLeast(place, typed, { kind: 'number', least })
  if (Number.isFinite(value) && !Number.isInteger(value)) {
    reading.report({ code: 'wrong value', place, found: String(typed), needed: 'a whole number' })
  }
  return value
}

/** Demands of a document, in its order. */
export function readDemands(bench: ProvingBench): readonly Demand[] {
  const { reading } = bench
  return Object.entries(reading.document.demands ?? {}).map(([id, typed]) => {
    const place = `demands.${id}`
    return {
      id,
      asks: reading.text(`${place}.asks`, typed.asks),
      reason: reading.text(`${place}.reason`, typed.reason),
      source: reading.text(`${place}.source`, typed.source),
      shownBy: readShownBy(`${place}.shownBy`, typed.shownBy, bench),
    }
  })
}
