import { type GaugeStudy, shareOfTolerance } from '../../engine/index.ts'
import { asSentence } from '../sentences/words.ts'
import type { NamedStudy } from './read-study.ts'

/** `The gauge, with who reads it, has a deviation of 0.0013 mm and tells 7 steps of size apart among these parts.` */
export function studySentence({ parts, appraisers }: NamedStudy, found: GaugeStudy, tolerance_mm?: number): string {
  const who =
    appraisers.length === 1 ? 'read by one person, of whom nothing can be compared' : `read by ${appraisers.length} people`
  const steps = Math.floor(found.toldApart)
  const share =
    tolerance_mm === undefined
      ? ''
      : `; six of its deviations take ${percent(shareOfTolerance(found, tolerance_mm))} of the tolerance`
  const head = asSentence(`the gauge on ${parts.length} parts, ${who}, has a deviation of ${size(found.gauge)} mm${share}`)
  return `${head} ${asSentence(`among these parts it tells ${steps} ${steps === 1 ? 'step' : 'steps'} of size apart`)}`
}

/** Where the spread of a single reading comes from. */
export interface StudyRow {
  readonly from: string
  readonly deviation: string
  /** Of the variance of a single reading. */
  readonly share: string
}

/** Rows of the shares. */
export function studyRows({ variance }: GaugeStudy): readonly StudyRow[] {
  const { repeat, appraiser, together, part } = variance
  const all = repeat + (appraiser ?? 0) + (together ?? 0) + part
  const row = (from: string, own: number | undefined): readonly StudyRow[] =>
    own === undefined ? [] : [{ from, deviation: size(Math.sqrt(own)), share: percent(all > 0 ? own / all : 0) }]
  return [
    ...row('the same person again', repeat),
    ...row('another person', appraiser),
    ...row('a person on some parts', together),
    ...row('the parts themselves', part),
  ]
}

const DIGITS = 3
const PERCENT = 100
const size = (value: number): string => String(Number(value.toPrecision(DIGITS)))
const percent = (share: number): string => `${Number((PERCENT * share).toPrecision(DIGITS))} %`
