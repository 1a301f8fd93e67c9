/**
 * Readings of a lot as a file of comma-separated values: what was typed under the columns that come in again, then what the program made of it,
 * for other programs. What every column means is written in docs/readings-file.md.
 */
import type { Characteristic } from '../../engine/index.ts'
import { csvText } from './csv-text.ts'
import type { KeptFound } from './standing-found.ts'

/** A reading as a bench book keeps it, with the words in which it was typed. */
export interface TypedFound extends KeptFound {
  readonly id: number
  readonly serial: string
  readonly found?: string | undefined
  readonly x?: string | undefined
  readonly y?: string | undefined
  readonly uncertainty?: string | undefined
  readonly gauge?: string | undefined
  readonly by?: string | undefined
  readonly date?: string | undefined
  readonly corrects?: number | undefined
  readonly reason?: string | undefined
  readonly file?: string | undefined
  readonly who: string
  readonly made: string
}

/** Columns that a table of readings is read by. */
const TYPED = ['reading', 'serial', 'characteristic', 'found', 'x', 'y', 'uncertainty', 'visit', 'gauge', 'by', 'date'] as const
const CORRECTS = ['corrects', 'reason'] as const
/** Columns for other programs: they are passed over when the file comes in again. */
const TOLD = ['plan number', 'value least', 'value most', 'value x', 'value y', 'value uncertainty', 'value unit'] as const
const ENTERED = ['corrected by', 'entered by', 'entered', 'from file'] as const

/**
 * Every reading of a lot, those that were corrected too. What was taken back with its import is left out: where the file comes in, it would count.
 *
 * @param plan the frozen plan of the lot
 */
export function readingsFile(readings: readonly TypedFound[], plan: readonly Characteristic[]): string {
  const rows = withoutWithdrawn(readings).map((reading) => [
    ...typedCells(reading),
    ...toldCells(reading, plan),
    ...enteredCells(reading),
  ])
  return csvText([[...TYPED, ...CORRECTS, ...TOLD, ...ENTERED], ...rows])
}

/** A correction of what is left out corrects what that one corrected. */
function withoutWithdrawn(readings: readonly TypedFound[]): readonly TypedFound[] {
  const known = new Map(readings.map((reading) => [reading.id, reading]))
  const placeOf = (id: number | undefined): number | undefined => {
    const there = id === undefined ? undefined : known.get(id)
    return there?.withdrawn === undefined ? id : placeOf(there.corrects)
  }
  return readings
    .filter(({ withdrawn }) => withdrawn === undefined)
    .map(({ corrects, reason, ...reading }) => {
      const place = placeOf(corrects)
      return place === undefined ? reading : { ...reading, corrects: place, reason }
    })
}

function typedCells(reading: TypedFound): readonly string[] {
  const { id, serial, characteristic, visit, gauge = '', by = '', date = '', corrects, reason = '' } = reading
  const [found, x, y, uncertainty] = [reading.found, reading.x, reading.y, reading.uncertainty].map(withPoint)
  return [String(id), serial, characteristic, found, x, y, uncertainty, visit, gauge, by, date, String(corrects ?? ''), reason]
}

/** A comma between digits was read as a decimal one, for another would not have been taken. */
const withPoint = (typed = ''): string => typed.replaceAll(/(\d),(\d)/g, '$1.$2')

function toldCells({ characteristic, value }: TypedFound, plan: readonly Characteristic[]): readonly string[] {
  const planned = plan.find(({ id }) => id === characteristic)
  const number = String(planned?.number ?? '')
  if (value === undefined) return [number, '', '', '', '', '', '']
  if ('x_mm' in value) return [number, '', '', ...[value.x_mm, value.y_mm, value.uncertainty_mm].map(String), 'mm']
  return [number, String(value.least), String(value.most), '', '', '', planned?.unit ?? '']
}

const enteredCells = ({ correctedBy, who, made, file = '' }: TypedFound): readonly string[] => [
  String(correctedBy ?? ''),
  who,
  made,
  file,
]
