import type { Problem } from '../engine/index.ts'
import type { EntryOf, NewEntries, Store } from '../records/index.ts'
import { type BenchRow, type BenchTable, farOutsideRows, readBenchTable } from '../report/index.ts'
import { engineName } from './engine-name.ts'

/** A table of readings of one lot, and who brings it. */
export interface ReadingsToKeep {
  readonly design: string
  readonly lot: string
  readonly who: string
  readonly table: BenchTable
  /** Name of the file that the table comes from; the same rows are not taken twice for one lot. */
  readonly file?: string | undefined
  /** Set once it was asked about readings far outside of their limits, and they were read so. */
  readonly asRead?: boolean | undefined
}

/**
 * Numbers of the readings, and headings that nothing was taken from; or every problem by row and column; or what is asked first. Only of the first
 * anything was kept.
 */
export type KeptReadings =
  | { readonly kept: readonly number[]; readonly passedOver: readonly string[]; readonly problems?: never; readonly asks?: never }
  | { readonly problems: readonly Problem[]; readonly kept?: never; readonly asks?: never }
  | { readonly asks: readonly string[]; readonly kept?: never; readonly problems?: never }

/** Reads a table of readings against the frozen plan of its lot and keeps all of it, or nothing. Serial numbers that are new are entered. */
export function keepReadings(store: Store, { design, lot, who, table, file, asRead }: ReadingsToKeep): KeptReadings {
  const found = store.bench.lots(design).find((one) => one.lot === lot)
  const plan = found && store.bench.plan(design, found.revision)
  if (plan === undefined) return { problems: [{ ...noLot, found: `lot ${lot}, which is not there` }] }
  const read = readBenchTable(table, { plan, gauges: store.bench.gauges() })
  if (read.problems.length > 0) return { problems: read.problems }
  const asks = asRead === true ? [] : farOutsideRows(read.rows)
  if (asks.length > 0) return { asks }
  const serials = [...new Set(read.rows.map(({ serial }) => serial))]
  const articles = serials.map((serial) => ({ kind: 'article', lot, serial }) as const)
  const entries = [...articles, ...read.rows.map(readingEntry)]
  const asked: NewEntries = {
    entries,
    who,
    engine: engineName,
    ...(file !== undefined && { file: { lot, name: file, text: JSON.stringify(table.rows) } }),
  }
  const answer = store.bench.keepEntries(design, asked)
  if ('kept' in answer) return { kept: answer.kept, passedOver: read.passedOver }
  const rows = [...serials.map((serial) => read.rows.find((row) => row.serial === serial)), ...read.rows]
  return { problems: atRows(answer.refused, rows) }
}

const noLot = { code: 'not there', place: '', needed: 'a lot of this design', wayOut: 'Begin the lot first.' }

function readingEntry({ row: _, characteristic, reading, ...said }: BenchRow): EntryOf<'reading'> {
  const { typed, ...rest } = said
  const value =
    reading === undefined
      ? undefined
      : 'size' in reading
        ? { least: reading.size.least, most: reading.size.most }
        : { ...reading.at, uncertainty_mm: reading.uncertainty_mm }
  return { kind: 'reading', characteristic: characteristic.id, ...typed, ...rest, ...(value && { value }) }
}

/** The store counts entries; who brings a table looks for its row, and is told of it once. */
function atRows(problems: readonly Problem[], rows: readonly (BenchRow | undefined)[]): readonly Problem[] {
  const placed = problems.map((problem) => {
    const row = rows[Number(/^entry (\d+)$/.exec(problem.place)?.[1]) - 1]
    return row === undefined ? problem : { ...problem, place: `row ${row.row}` }
  })
  return placed.filter(({ place }, index) => placed.findIndex((other) => other.place === place) === index)
}
