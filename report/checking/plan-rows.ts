import {
  type Characteristic,
  type Conformity,
  type FigureUnit,
  type Reading,
  shownFigure,
  type UnitSystem,
} from '../../engine/index.ts'
import { marks } from '../tables/marks.ts'
import type { ValueText } from '../tables/value-text.ts'

/** One characteristic of the plan as it is printed. */
export interface PlanRow {
  readonly number: number
  readonly id: string
  readonly words: string
  /** As drawn: the size, or of a position `x 44, y 0 mm from hole mcp`. */
  readonly drawn: string
  /** `2.994 to 3.000 mm`, or `⌀ 0.02 mm about it`. */
  readonly allowed: string
  /** Of a coated diameter: what the shop works to, before the coating. */
  readonly bare?: string
}

/** Digits of a size that is measured in micrometres. */
const DIGITS = 6
const UNITS: Partial<Record<Characteristic['unit'], FigureUnit>> = { mm: 'mm', rad: 'rad', N: 'N', N·mm: 'N·mm' }

/** The unit of a size as one of a figure. */
export const figureUnitOf = (unit: Characteristic['unit']): FigureUnit => UNITS[unit] ?? '1'

/** Rows of the inspection plan. */
export function planRows(plan: readonly Characteristic[], system: UnitSystem = 'metric'): readonly PlanRow[] {
  return plan.map((characteristic) => {
    const { number, id, words, kind, place, nominal, least, most, before } = characteristic
    const text = (value: number): ValueText => sizeText(value, characteristic.unit, system)
    if (place) {
      const [x, y, zone] = [place.x_mm, place.y_mm, place.zone_mm].map(text)
      return {
        number,
        id,
        words,
        drawn: `x ${x.number}, y ${y.number} ${y.unit}${place.datum === undefined ? '' : ` from hole ${place.datum}`}`,
        allowed: `⌀ ${zone.number} ${zone.unit} about it`,
      }
    }
    const [low, high] = [text(least), text(most)]
    const drawn = kind === 'profile' ? 'as drawn' : `${text(nominal).number} ${text(nominal).unit}`
    const range = before && [text(before.least), text(before.most)]
    const bare = range && { bare: `${range[0].number} to ${range[1].number} ${range[1].unit}` }
    return { number, id, words, drawn, allowed: `${low.number} to ${high.number} ${high.unit}`, ...bare }
  })
}

/** The row of what was read: before the coating it is allowed what the shop works to. */
export function readingRow(reading: Reading, system: UnitSystem = 'metric'): PlanRow {
  const [row] = planRows([reading.characteristic], system)
  const isBare = 'visit' in reading && reading.visit === 'before coating'
  return isBare && row.bare ? { ...row, words: `${row.words}, before coating`, allowed: row.bare } : row
}

/** A measured size without zeros at its end that nobody read. */
export function sizeText(value: number, unit: Characteristic['unit'], system: UnitSystem): ValueText {
  const shown = shownFigure(value, figureUnitOf(unit), { system, digits: DIGITS })
  const number = /^−?\d+\.\d+$/.test(shown.number) ? shown.number.replace(/0+$/, '').replace(/\.$/, '') : shown.number
  return { number, unit: shown.unit }
}

/** What was read: `2.997 mm`, `3.004 to 3.006 mm`, `x 0.004, y −0.002 mm`. */
export function foundText(reading: Reading, system: UnitSystem = 'metric'): string {
  const { unit } = reading.characteristic
  const text = (value: number): ValueText => sizeText(value, unit, system)
  if ('at' in reading) return `x ${text(reading.at.x_mm).number}, y ${text(reading.at.y_mm).number} ${text(reading.at.y_mm).unit}`
  const [least, most] = [text(reading.size.least), text(reading.size.most)]
  return least.number === most.number ? `${least.number} ${least.unit}` : `${least.number} to ${most.number} ${most.unit}`
}

/** The answer whose mark stands beside a reading. */
export const conformityAnswer = { within: 'met', outside: 'short', undecided: 'undecided' } as const

/** Mark and word of a reading against its limits. */
export function conformityText(conformity: Conformity): string {
  return `${marks[conformityAnswer[conformity]].character} ${conformity}`
}

/** What an inspection plan comes to, as a sentence. @param count characteristics of the plan */
export function planSentence(count: number): string {
  if (count === 0) {
    return 'No size is limited, so nothing can come out right or wrong: state tolerances, or a general tolerance for the lengths.'
  }
  return count === 1 ? 'One size is limited.' : `${count} sizes and places are limited, piece by piece.`
}
