/** The history of one serial number in words, the same for every door: each reading, then coating, tests, decisions, signatures and what came back. */
import type { Characteristic, FieldEntry } from '../../engine/index.ts'
import type { Answer } from '../tables/overall-verdict.ts'
import {
  cameBackWords,
  certificateWords,
  decisionWords,
  type ToldCertificate,
  type ToldDecision,
  type ToldTest,
  testWords,
} from './kept-words.ts'
import { conformityText, planRows } from './plan-rows.ts'
import type { SerialSheet } from './serial-sheet.ts'
import { isStanding, type KeptFound } from './standing-found.ts'

/** How an entry is signed and what it corrects. */
interface Kept {
  readonly id: number
  readonly who: string
  /** ISO 8601 in UTC. */
  readonly made: string
  readonly corrects?: number | undefined
  readonly reason?: string | undefined
  readonly correctedBy?: number | undefined
}

/** A reading of the history as it is kept. */
export interface HistoryReading extends KeptFound, Omit<Kept, 'correctedBy'> {
  readonly found?: string | undefined
  readonly x?: string | undefined
  readonly y?: string | undefined
  readonly gauge?: string | undefined
  /** Day of the calibration that the gauge had, and the least step that it shows. */
  readonly calibrated?: string | undefined
  readonly resolution_mm?: number | undefined
  readonly by?: string | undefined
  readonly date?: string | undefined
  readonly file?: string | undefined
  readonly withdrawn?: { readonly who: string; readonly made: string; readonly reason: string } | undefined
}

/** What is told of a serial number. */
export interface History {
  readonly readings: readonly HistoryReading[]
  readonly certificates: readonly (Kept & ToldCertificate)[]
  readonly tests: readonly (Kept & ToldTest)[]
  readonly decisions: readonly (Kept & ToldDecision)[]
  readonly signOffs: readonly (Kept & { readonly statement: string })[]
  readonly field: readonly (Kept & Omit<FieldEntry, 'id' | 'correctedBy'>)[]
}

/** How a door tells a moment. @param made ISO 8601 in UTC */
export type Moment = (made: string) => string

/** One reading of the history in words. */
export interface HistoryRow {
  readonly id: number
  readonly number?: number
  readonly words: string
  readonly typed: string
  /** Whether it counts no longer. */
  readonly isStruck: boolean
  /** Against the drawing; absent for one that does not count, or that a later one of the same size took the place of. */
  readonly judged?: { readonly answer: Answer; readonly word: string }
  /** Why it does not count; else mark and word of the judgement. */
  readonly answer: string
  readonly said: string
}

interface Told {
  readonly history: Pick<History, 'readings'>
  readonly plan: readonly Characteristic[]
  readonly sheet: SerialSheet | undefined
  readonly moment: Moment
}

/** Every reading, oldest first. */
export function historyRows({ history: { readings }, plan, sheet, moment }: Told): readonly HistoryRow[] {
  const judged = new Map(sheet?.rows.map((row) => [`${row.id} ${row.visit}`, row]))
  const newest = new Map(readings.filter(isStanding).map((reading) => [sizeOf(reading), reading.id]))
  return readings.map((reading) => {
    const planned = plan.find(({ id }) => id === reading.characteristic)
    const row = newest.get(sizeOf(reading)) === reading.id ? judged.get(sizeOf(reading)) : undefined
    return {
      id: reading.id,
      ...(planned && { number: planned.number }),
      words: planned === undefined ? reading.characteristic : planRows([planned])[0].words,
      typed: typedWords(reading),
      isStruck: reading.correctedBy !== undefined || reading.withdrawn !== undefined,
      ...(row && { judged: { answer: row.answer, word: row.conformity } }),
      answer: row === undefined ? struckWords(reading, moment) : conformityText(row.conformity),
      said: saidWords(reading, moment),
    }
  })
}

const sizeOf = ({ characteristic, visit }: HistoryReading): string => `${characteristic} ${visit}`

const typedWords = ({ found, x, y, visit }: HistoryReading): string =>
  `${found ?? (x === undefined ? 'taken back' : `x ${x}, y ${y}`)}${visit === 'finished' ? '' : `, ${visit}`}`

function struckWords({ value, correctedBy, withdrawn }: HistoryReading, moment: Moment): string {
  if (withdrawn !== undefined)
    return `withdrawn with its import: ${withdrawn.reason} (${withdrawn.who}, ${moment(withdrawn.made)})`
  if (correctedBy !== undefined) return `corrected by reading ${correctedBy}`
  return value === undefined ? '' : 'a later reading counts'
}

/** `caliper 1, calibrated 2031-01-02, steps of 0.01 mm`; undefined where no gauge was said. */
export function gaugeWords({ gauge, calibrated, resolution_mm }: Pick<HistoryReading, 'gauge' | 'calibrated' | 'resolution_mm'>) {
  if (gauge === undefined || calibrated === undefined || resolution_mm === undefined) return gauge
  return `${gauge}, calibrated ${calibrated}, steps of ${resolution_mm} mm`
}

/** Who measured is told where it is another than who entered it. */
function saidWords(reading: HistoryReading, moment: Moment): string {
  const { by, date, file, corrects, reason, who, made } = reading
  const gauge = gaugeWords(reading)
  const measured = `measured${by === undefined ? '' : ` by ${by}`}${date === undefined ? '' : ` on ${date}`}`
  return [
    ...(by === undefined && date === undefined ? [] : [measured]),
    ...(gauge === undefined ? [] : [gauge]),
    ...(reason === undefined ? [] : [`corrects reading ${corrects}: ${reason}`]),
    `entered ${moment(made)} by ${who}${file === undefined ? '' : ` from ${file}`}`,
  ].join('; ')
}

/** What is told of a calibration beside its sizes: who entered it and when, and what it corrects or what corrects it. */
export function calibrationSaid({ id, who, made, corrects, reason, correctedBy }: Kept, moment: Moment): string {
  return [
    `calibration ${id}`,
    `entered ${moment(made)} by ${who}`,
    ...(reason === undefined ? [] : [`corrects calibration ${corrects}: ${reason}`]),
    ...(correctedBy === undefined ? [] : [`corrected by calibration ${correctedBy}`]),
  ].join('; ')
}

/** Sorts of entries beside the readings, by what they are called in the book. */
export type HistorySort = 'certificate' | 'test' | 'decision' | 'signature' | 'came back'

/** One further entry of the history in words. */
export interface HistoryLine {
  readonly sort: HistorySort
  readonly id: number
  readonly words: string
  readonly said: string
  readonly isStruck: boolean
}

/** Coating, tests, decisions, signatures and what came back, oldest first; each with its number, by which it can be corrected. */
export function historyLines(history: Omit<History, 'readings'>, moment: Moment): readonly HistoryLine[] {
  const { certificates, tests, decisions, signOffs, field } = history
  const line = (sort: HistorySort, kept: Kept, words: string) => ({ ...lineOf({ sort, kept, words, moment }), made: kept.made })
  return [
    ...certificates.map((one) => line('certificate', one, certificateWords(one))),
    ...tests.map((one) => line('test', one, testWords(one))),
    ...decisions.map((one) => line('decision', one, decisionWords(one))),
    ...signOffs.map((one) => line('signature', one, `Signed off. ${one.statement}`)),
    ...field.map((one) => line('came back', one, cameBackWords(one))),
  ]
    .toSorted((one, other) => Date.parse(one.made) - Date.parse(other.made))
    .map(({ made: _, ...rest }) => rest)
}

interface OneLine {
  readonly sort: HistorySort
  readonly kept: Kept
  readonly words: string
  readonly moment: Moment
}

function lineOf({ sort, kept, words, moment }: OneLine): HistoryLine {
  const { id, who, made, corrects, reason, correctedBy } = kept
  const said = [
    `${sort} ${id}`,
    `${who}, ${moment(made)}`,
    ...(reason === undefined ? [] : [`corrects ${sort} ${corrects}: ${reason}`]),
    ...(correctedBy === undefined ? [] : [`corrected by ${sort} ${correctedBy}`]),
  ]
  return { sort, id, words, said: said.join('; '), isStruck: correctedBy !== undefined }
}
