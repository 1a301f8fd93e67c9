import type { Characteristic, Problem, Reading } from '../../engine/index.ts'
import { readReadings } from './read-readings.ts'

/** Columns of a table for the bench book. */
export const benchColumns = [
  'serial',
  'characteristic',
  'found',
  'x',
  'y',
  'uncertainty',
  'visit',
  'gauge',
  'corrects',
  'reason',
] as const
export type BenchColumn = (typeof benchColumns)[number]

/** A row by its columns; empty where nothing stands. */
export type BenchCells = Readonly<Record<BenchColumn, string>>

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
  const { row, cells, decimal } = typed
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
      ...filled({ gauge: cells.gauge, reason: cells.reason }),
      ...(cells.corrects !== '' && { corrects: Number(cells.corrects) }),
      ...(!takesBack && { reading }),
    },
  }
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
  if (!/^([1-9]\d{0,8})?$/.test(cells.corrects)) return wrong('corrects', 'the number of the reading that it corrects')
  if (cells.corrects !== '' && cells.reason === '') return wrong('reason', 'why it corrects another')
  if (cells.corrects === '' && cells.reason !== '')
    return wrong('corrects', 'the number of the reading that it corrects, or no reason')
  const isKnown = cells.gauge === '' || gauges.some(({ gauge }) => gauge === cells.gauge)
  return isKnown ? undefined : wrong('gauge', gaugesNeeded(gauges))
}

const gaugesNeeded = (gauges: readonly GaugeUncertainty[]): string =>
  gauges.length === 0 ? 'nothing: no gauge is entered yet' : `one of ${gauges.map(({ gauge }) => gauge).join(', ')}`

function withPoints(cells: BenchCells, decimal: TypedRow['decimal']): BenchCells {
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
