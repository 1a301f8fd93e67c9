/**
 * Readings from the rows of a table: a heading, then one reading a row.
 *
 *     serial, characteristic, found, x, y, uncertainty, visit
 *
 * `characteristic` is its number in the plan or its place in the design; `found` is a size or an interval such as `3.004 to 3.006`, of a position
 * `x` and `y` from the datum hole stand instead; a distance of holes may be typed as it was taken, `27.507 over 3 and 3`; a number without a unit is in mm (an angle in degrees); `visit` is `before coating` for a
 * diameter that was measured before it was coated, else empty. Columns may stand in any order, further ones are
 * passed over and told. Nothing is taken over where one row has a problem.
 */
import {
  type Characteristic,
  holeDistance,
  isTakenOverPins,
  nearestName,
  type Problem,
  type QuantityKind,
  type Reading,
  readQuantity,
} from '../../engine/index.ts'
import { pinsOf } from './over-pins.ts'

/** Readings of one set. */
export interface ReadSet {
  readonly serial: string
  readonly readings: readonly Reading[]
}

/** Either the sets, in the order in which they come first, or every problem by its row. */
export type ReadReadings =
  | { readonly sets: readonly ReadSet[]; readonly passedOver: readonly string[] }
  | { readonly sets?: never; readonly problems: readonly Problem[] }

const COLUMNS = ['serial', 'characteristic', 'found', 'x', 'y', 'uncertainty', 'visit'] as const
type Column = (typeof COLUMNS)[number]
const NEEDED: readonly Column[] = ['serial', 'characteristic']

/** @param rows cells as text, the heading first */
export function readReadings(rows: readonly (readonly string[])[], plan: readonly Characteristic[]): ReadReadings {
  const heading = (rows[0] ?? []).map((cell) => cell.trim().toLowerCase())
  const missing = NEEDED.filter((column) => !heading.includes(column))
  if (missing.length > 0 || !(heading.includes('found') || heading.includes('x'))) return { problems: [noHeading(heading)] }
  const problems: Problem[] = []
  const sets = new Map<string, Reading[]>()
  for (const [index, cells] of rows.slice(1).entries()) {
    if (cells.every((cell) => cell.trim() === '')) continue
    const row = rowReader(heading, cells, { number: index + 2, problems })
    const read = readRow(row, plan)
    if (read) sets.set(read.serial, [...(sets.get(read.serial) ?? []), read.reading])
  }
  problems.push(...[...sets].flatMap(([serial, readings]) => readTwice(serial, readings)))
  if (sets.size === 0 && problems.length === 0)
    problems.push({ code: 'missing', place: 'row 2', found: 'no reading', needed: 'at least one' })
  if (problems.length > 0) return { problems }
  const passedOver = heading.filter((name) => name !== '' && !COLUMNS.includes(name as Column))
  return { sets: [...sets].map(([serial, readings]) => ({ serial, readings })), passedOver }
}

function noHeading(heading: readonly string[]): Problem {
  const needed = 'a heading with serial, characteristic and found (or x and y), with uncertainty where it is known'
  return { code: 'wrong value', place: 'row 1', found: heading.join(', ') || 'nothing', needed }
}

interface RowReader {
  readonly cell: (column: Column) => string
  readonly report: (column: Column, problem: Omit<Problem, 'place'>) => undefined
}

function rowReader(
  heading: readonly string[],
  cells: readonly string[],
  { number, problems }: { readonly number: number; readonly problems: Problem[] },
): RowReader {
  return {
    cell: (column) => (cells[heading.indexOf(column)] ?? '').trim(),
    report: (column, problem) => {
      problems.push({ ...problem, place: `row ${number}, ${column}` })
      return undefined
    },
  }
}

function readRow(row: RowReader, plan: readonly Characteristic[]): { serial: string; reading: Reading } | undefined {
  const serial = row.cell('serial')
  if (serial === '') return row.report('serial', { code: 'missing', found: 'nothing', needed: 'the serial number of the set' })
  const named = row.cell('characteristic')
  const characteristic = plan.find(({ number, id }) => String(number) === named || id === named)
  if (!characteristic) return row.report('characteristic', unknown(named, plan))
  const kind: QuantityKind = characteristic.unit === 'rad' ? 'angle' : 'length'
  const uncertainty = row.cell('uncertainty') === '' ? 0 : readCell(row, 'uncertainty', kind)
  if (uncertainty === undefined) return undefined
  if (uncertainty < 0)
    return row.report('uncertainty', { code: 'too small', found: row.cell('uncertainty'), needed: 'nothing below 0' })
  if (characteristic.kind === 'position') {
    const x_mm = readCell(row, 'x', kind)
    const y_mm = readCell(row, 'y', kind)
    if (x_mm === undefined || y_mm === undefined) return undefined
    return { serial, reading: { characteristic, at: { x_mm, y_mm }, uncertainty_mm: uncertainty } }
  }
  const found = readInterval(row, { kind, characteristic })
  if (!found) return undefined
  const size = { least: found.least - uncertainty, most: found.most + uncertainty }
  const visit = readVisit(row, characteristic)
  return visit && { serial, reading: { characteristic, size, ...(visit === 'before coating' && { visit }) } }
}

type Visit = NonNullable<Extract<Reading, { readonly size: object }>['visit']>

function readVisit(row: RowReader, { before }: Characteristic): Visit | undefined {
  const typed = row.cell('visit')
  if (typed === '' || typed === 'finished') return 'finished'
  if (typed === 'before coating' && before) return typed
  const needed = before ? 'finished or before coating' : 'finished, or nothing: this size is not coated'
  return row.report('visit', { code: 'wrong value', found: typed, needed })
}

function unknown(named: string, plan: readonly Characteristic[]): Omit<Problem, 'place'> {
  const nearest = nearestName(
    named,
    plan.map(({ id }) => id),
  )
  const needed = `a number from 1 to ${plan.length} of the plan, or the place of a characteristic`
  return {
    code: 'unknown name',
    found: named || 'nothing',
    needed,
    ...(nearest !== undefined && { wayOut: `Did you mean ${nearest}?` }),
  }
}

/** A size, or the two ends between which a gauge says that it lies; of a distance also as it was taken over or between two pins. */
function readInterval(row: RowReader, { kind, characteristic }: Sized): { least: number; most: number } | undefined {
  const pins = pinsOf(row.cell('found'))
  if (pins !== undefined && !isTakenOverPins(characteristic))
    return row.report('found', {
      code: 'wrong value',
      found: row.cell('found'),
      needed: 'a size: only a distance is taken over pins',
    })
  const ends = (pins?.length ?? row.cell('found')).split(/\s+to\s+|\.\./)
  if (ends.length > 2)
    return row.report('found', { code: 'wrong value', found: row.cell('found'), needed: 'a size, or two with to between' })
  const [first, second, ...read] = [...(pins?.thick ?? ['0', '0']), ...ends].map((typed) =>
    readTyped(row, { column: 'found', typed, kind }),
  )
  const [least, most = least] = read
  if (least === undefined || most === undefined || first === undefined || second === undefined) return undefined
  if (most < least)
    return row.report('found', { code: 'wrong order', found: row.cell('found'), needed: 'the smaller size first' })
  if (pins === undefined) return { least, most }
  const distance = (length_mm: number): number => holeDistance({ length_mm, pins_mm: [first, second], taken: pins.taken })
  return { least: distance(least), most: distance(most) }
}

interface Sized {
  readonly kind: QuantityKind
  readonly characteristic: Characteristic
}

const readCell = (row: RowReader, column: Column, kind: QuantityKind): number | undefined =>
  readTyped(row, { column, typed: row.cell(column), kind })

interface Typed {
  readonly column: Column
  readonly typed: string
  readonly kind: QuantityKind
}

/** What a number without a unit stands for. */
const USUAL_UNIT: Partial<Record<QuantityKind, string>> = { length: 'mm', angle: 'deg' }

function readTyped(row: RowReader, { column, typed, kind }: Typed): number | undefined {
  if (typed === '') return row.report(column, { code: 'missing', found: 'nothing', needed: 'what was read' })
  const isBare = /^[-+]?[\d.]+$/.test(typed)
  const { value, problems } = readQuantity(isBare ? `${typed} ${USUAL_UNIT[kind]}` : typed, kind)
  if (value !== undefined) return value
  const [{ place: _, ...problem }] = problems
  const hasComma = /^[-+]?\d+,\d+/.test(typed)
  return row.report(column, hasComma ? { ...problem, wayOut: 'Type a point for the decimals.' } : problem)
}

/** A second reading of one characteristic is a correction or a repeat; which one cannot be told from a table. */
function readTwice(serial: string, readings: readonly Reading[]): readonly Problem[] {
  const visits = readings.map((reading) => `${reading.characteristic.number}${'visit' in reading ? ` ${reading.visit}` : ''}`)
  const twice = [...new Set(visits.filter((visit, index) => visits.indexOf(visit) !== index))]
  return twice.map((visit) => ({
    code: 'too many',
    place: `serial ${serial}`,
    found: `characteristic ${visit} read more than once`,
    needed: 'one reading of each',
    wayOut: 'Keep the reading that stands.',
  }))
}
