import type { Characteristic, Problem, Reading } from '../../engine/index.ts'
import type { BenchCells, BenchColumn } from './bench-columns.ts'
import { readReadings } from './read-readings.ts'
import { withUnit } from './unit-column.ts'

/** One reading as it was typed and as it was read; without `reading` it takes back the one that it corrects. */
export interface BenchRow {
  /** Of the table, its heading being 1. */
  readonly row: number
  readonly serial: string
  readonly characteristic: Characteristic
  readonly reading?: Reading
  readonly typed: Partial<Record<'found' | 'x' | 'y' | 'uncertainty', string>>
  readonly visit: 'before coating' | 'finished'
  readonly gauge?: string
  /** Who measured, and on which day, where the table says so. */
  readonly by?: string
  readonly date?: string
  /** Its own number in the table, by which a later row corrects it. */
  readonly number?: number
  readonly corrects?: number
  readonly reason?: string
}

/** What a gauge adds where a row says nothing of its uncertainty. */
export interface GaugeUncertainty {
  readonly gauge: string
  readonly uncertainty_mm: number
}

/** What a table is read against. */
export interface ReadAgainst {
  readonly plan: readonly Characteristic[]
  readonly gauges: readonly GaugeUncertainty[]
}

/** A row of a table as it was typed. */
export interface TypedRow {
  readonly row: number
  readonly cells: BenchCells
  readonly decimal: 'point' | 'comma'
}

/** One reading, or every problem of its row. */
export type ReadRow =
  | { readonly value: BenchRow; readonly problems?: never }
  | { readonly value?: never; readonly problems: readonly Problem[] }

const VISITS: Readonly<Record<string, BenchRow['visit']>> = {
  '': 'finished',
  finished: 'finished',
  'before coating': 'before coating',
}

/** Reads one row of a table of readings. */
export function readBenchRow(typed: TypedRow, against: ReadAgainst): ReadRow {
  const { row, decimal } = typed
  const cells = withUnit(typed.cells)
  if (cells === undefined) return { problems: [twoUnits(typed)] }
  const wrong = wrongCell(cells, against)
  if (wrong !== undefined) return { problems: [{ ...wrong.problem, place: `row ${row}, ${wrong.column}` }] }
  const takesBack = cells.corrects !== '' && cells.found === '' && cells.x === '' && cells.y === ''
  const read = readValue(takesBack ? { ...cells, found: '0', x: '0', y: '0' } : withPoints(cells, decimal), against)
  if (read.problems !== undefined)
    return { problems: read.problems.map((problem) => ({ ...problem, place: problem.place.replace('row 2', `row ${row}`) })) }
  const { serial, reading } = read
  return {
    value: {
      ...{ row, serial, characteristic: reading.characteristic, visit: VISITS[cells.visit] },
      typed: filled({ found: cells.found, x: cells.x, y: cells.y, uncertainty: cells.uncertainty }),
      ...filled({ gauge: cells.gauge, by: cells.by, date: cells.date, reason: cells.reason }),
      ...(cells.reading !== '' && { number: Number(cells.reading) }),
      ...(cells.corrects !== '' && { corrects: Number(cells.corrects) }),
      ...(!takesBack && { reading }),
    },
  }
}

/** A unit in its own column that is not the one beside the number. */
export function twoUnits({ row, cells }: Omit<TypedRow, 'decimal'>): Problem {
  const found = `${cells.unit}, beside ${[cells.found, cells.x, cells.y].filter((typed) => typed !== '').join(', ')}`
  return { code: 'wrong value', place: `row ${row}, unit`, found, needed: 'one unit, beside the number or in its own column' }
}

interface WrongCell {
  readonly column: BenchColumn
  readonly problem: Omit<Problem, 'place'>
}

/** The first cell beside the reading itself that says what cannot be. */
function wrongCell(cells: BenchCells, { gauges }: ReadAgainst): WrongCell | undefined {
  const wrong = (column: BenchColumn, needed: string): WrongCell => {
    const found = cells[column]
    return { column, problem: { code: found === '' ? 'missing' : 'wrong value', found: found || 'nothing', needed } }
  }
  if (VISITS[cells.visit] === undefined) return wrong('visit', 'finished, before coating, or nothing')
  if (cells.date !== '' && !isDay(cells.date)) return wrong('date', 'a day as year-month-day, such as 2031-04-05')
  if (!ENTRY.test(cells.reading)) return wrong('reading', 'a whole number from 1, or nothing')
  if (!ENTRY.test(cells.corrects)) return wrong('corrects', 'the number of the reading that it corrects')
  if (cells.corrects !== '' && cells.reason === '') return wrong('reason', 'why it corrects another')
  if (cells.corrects === '' && cells.reason !== '')
    return wrong('corrects', 'the number of the reading that it corrects, or no reason')
  const isKnown = cells.gauge === '' || gauges.some(({ gauge }) => gauge === cells.gauge)
  return isKnown ? undefined : wrong('gauge', gaugesNeeded(gauges))
}

/** The number of a reading, or nothing. */
const ENTRY = /^([1-9]\d{0,8})?$/

/** Day and month in another order cannot be told apart, so that only one way of writing is taken. The thirtieth of February is no day. */
function isDay(typed: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(typed)) return false
  const moment = Date.parse(`${typed}T00:00:00Z`)
  return Number.isFinite(moment) && new Date(moment).toISOString().startsWith(typed)
}

const gaugesNeeded = (gauges: readonly GaugeUncertainty[]): string =>
  gauges.length === 0 ? 'nothing: no gauge is entered yet' : `one of ${gauges.map(({ gauge }) => gauge).join(', ')}`

/** Decimals with points. */
export function withPoints(cells: BenchCells, decimal: TypedRow['decimal']): BenchCells {
  if (decimal === 'point') return cells
  const pointed = (typed: string): string => typed.replaceAll(/(\d),(\d)/g, '$1.$2')
  return {
    ...cells,
    found: pointed(cells.found),
    x: pointed(cells.x),
    y: pointed(cells.y),
    uncertainty: pointed(cells.uncertainty),
  }
}

function readValue(cells: BenchCells, { plan, gauges }: ReadAgainst) {
  const gauge = gauges.find((one) => one.gauge === cells.gauge)
  const isLength =
    plan.find(({ number, id }) => String(number) === cells.characteristic || id === cells.characteristic)?.unit === 'mm'
  const ofGauge = gauge !== undefined && isLength ? `${gauge.uncertainty_mm} mm` : ''
  const columns = ['serial', 'characteristic', 'found', 'x', 'y', 'uncertainty', 'visit'] as const
  const row = columns.map((column) => (column === 'uncertainty' && cells.uncertainty === '' ? ofGauge : cells[column]))
  const read = readReadings([columns, row], plan)
  if (read.sets === undefined) return { problems: read.problems }
  const [{ serial, readings }] = read.sets
  return { serial, reading: readings[0] }
}

/** Without the cells in which nothing stands. */
function filled<Key extends string>(cells: Readonly<Record<Key, string>>): Partial<Record<Key, string>> {
  return Object.fromEntries(Object.entries(cells).filter(([, typed]) => typed !== '')) as Partial<Record<Key, string>>
}
