/** What a lot says of the process, characteristic by characteristic. */
import {
  type Characteristic,
  foundOf,
  type LotStudy,
  limitsFor,
  lotStudy,
  type Ratio,
  type UnitSystem,
} from '../../engine/index.ts'
import { fixedText } from '../tables/fixed-text.ts'
import { readingRow, sizeText } from './plan-rows.ts'
import type { ReadSet } from './read-readings.ts'

/** One characteristic of a lot with its study. */
export interface StudiedLot {
  readonly number: number
  readonly words: string
  readonly unit: Characteristic['unit']
  readonly serials: readonly string[]
  readonly study: LotStudy
}

/** The same as it is printed. */
export interface LotRow {
  readonly number: number
  readonly words: string
  readonly count: number
  readonly mean: string
  readonly deviation: string
  /** `1.21 (0.63 to 1.78)`, or why there is none. */
  readonly cp: string
  readonly cpk: string
  readonly pp: string
  readonly ppk: string
  /** Where nineteen of twenty pieces lie. */
  readonly interval: string
  /** What else is to be known: signals, no normal process, too few readings. */
  readonly told: string
}

/**
 * Studies every characteristic that was read on two sets or more, in the order of the plan; sets stand in the order of their making. A film is
 * measured on the coupons of the lot, not on its pieces, and left out.
 */
export function studiedLots(sets: readonly ReadSet[]): readonly StudiedLot[] {
  const byKey = new Map<string, { readonly serial: string; readonly reading: ReadSet['readings'][number] }[]>()
  for (const { serial, readings } of sets)
    for (const reading of readings.filter(({ characteristic }) => characteristic.kind !== 'film')) {
      const { number, words } = readingRow(reading)
      const key = `${number} ${words}`
      byKey.set(key, [...(byKey.get(key) ?? []), { serial, reading }])
    }
  return [...byKey.values()]
    .filter((read) => read.length > 1)
    .map((read): StudiedLot => {
      const [{ reading }] = read
      const { number, words } = readingRow(reading)
      const values = read.map((one) => middleOf(foundOf(one.reading)))
      const study = lotStudy(values, limitsFor(reading))
      return { number, words, unit: reading.characteristic.unit, serials: read.map(({ serial }) => serial), study }
    })
    .toSorted((one, other) => one.number - other.number)
}

const middleOf = ({ least, most }: { readonly least: number; readonly most: number }): number => (least + most) / 2

/** Rows for a table. */
export function lotRows(lots: readonly StudiedLot[], system: UnitSystem = 'metric'): readonly LotRow[] {
  return lots.map(({ number, words, unit, study, serials }) => {
    const { sample, capability, interval } = study
    const text = (value: number): string => sizeText(roundedBy(value, sample), unit, system).number
    const shown = sizeText(roundedBy(sample.mean, sample), unit, system)
    return {
      number,
      words,
      count: sample.count,
      mean: `${shown.number} ${shown.unit}`.trim(),
      deviation: text(sample.deviation),
      cp: ratioText(capability?.cp),
      cpk: ratioText(capability?.cpk),
      pp: ratioText(capability?.pp),
      ppk: ratioText(capability?.ppk),
      interval: interval ? `${text(interval.least)} to ${text(interval.most)}` : 'too few readings',
      told: toldOf(study, serials),
    }
  })
}

/** A deviation of some ten readings is known to a third at best. */
const DEVIATION_digits = 2
const TEN = 10

/** A value without digits that say less than the deviation of its readings is known to. */
export function roundedBy(value: number, { deviation }: { readonly deviation: number }): number {
  if (deviation === 0) return value
  const step = TEN ** (Math.floor(Math.log10(deviation)) + 1 - DEVIATION_digits)
  return Math.round(value / step) * step
}

const ratioText = (ratio: Ratio | undefined): string =>
  ratio === undefined ? 'none' : `${shortNumber(ratio.value)} (${shortNumber(ratio.least)} to ${shortNumber(ratio.most)})`

const shortNumber = (value: number): string => fixedText(value, 2)

/** SOURCE trade: capability is mostly asked for on some thirty pieces and more. */
const READINGS_few = 30
/** Chance below which a process is told not to be normal. */
const CHANCE_small = 0.05

function toldOf({ sample, signals, normality, capability }: LotStudy, serials: readonly string[]): string {
  const lines = [
    ...(capability === undefined ? ['all readings are alike: the gauge does not tell them apart'] : []),
    ...(sample.count < READINGS_few ? [`${sample.count} readings say little: look at the interval, not at the ratio`] : []),
    ...(signals.length > 0 ? [`not chance alone at ${signals.map((place) => serials[place]).join(', ')}`] : []),
    ...(normality && normality.byChance < CHANCE_small ? ['not a normal process: ratios and interval do not hold'] : []),
  ]
  return lines.join('; ')
}
