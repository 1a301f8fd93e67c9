/**
 * How a value is set in print: the number by itself and its unit beside it, so that a page can set the unit in lighter ink
 * and a column of numbers lines up.
 */
import { type FieldReading, type FigureUnit, type Shown, shownFigure, type UnitSystem } from '../../engine/index.ts'
import { fixedText } from './fixed-text.ts'

/** A value ready for print. `unit` is empty where there is none. */
export type ValueText = Shown

const DEGREES_PER_RAD = 180 / Math.PI

/** Sets a figure's value in the reader's units with three significant digits; a count stays a whole number. */
export function setValue(value: number | boolean | string, unit: FigureUnit, system: UnitSystem = 'metric'): ValueText {
  if (unit === '1' && Number.isInteger(value)) return { number: String(value).replace('-', '−'), unit: '' }
  return shownFigure(value, unit, { system })
}

/** Number and unit as one word group: the degree sign stands at its number, other units a space apart. */
export function joined({ number, unit }: ValueText): string {
  return unit === '°' ? `${number}°` : `${number} ${unit}`.trimEnd()
}

/** Sets a value for the middle of a sentence: angles to a tenth of a degree, everything else with three digits at most. */
export function say(value: number | boolean | string, unit: FigureUnit, system: UnitSystem = 'metric'): string {
  if (typeof value === 'number' && unit === 'rad') return `${fixedText(value * DEGREES_PER_RAD, 1)}°`
  const text = shownFigure(value, unit, { system })
  return [trimmed(text.number), text.unit].filter((word) => word !== '').join(' ')
}

/** Units of readings that a reader of inches sees converted. */
const TOLD: Readonly<Record<string, FigureUnit>> = { mm: 'mm', rad: 'rad', N: 'N', N·mm: 'N·mm' }

/** How a typed quantity was read, with five digits at most: `6.35 mm`, `7°`, `68.755 N·mm/rad`. */
export function sayReading({ value, unit }: FieldReading, system: UnitSystem = 'metric'): string {
  const { number, unit: shown } = shownFigure(value, TOLD[unit] ?? '1', { system, digits: 5 })
  const words = TOLD[unit] === undefined ? unit.replace(/^1$/, '') : shown
  return joined({ number: trimmed(number), unit: words })
}

/** The value in the unit that documents carry: degrees for angles, the inside unit for the rest. */
export function documentValue(
  value: number | boolean | string,
  unit: FigureUnit,
): { value: number | boolean | string; unit: string } {
  if (unit === 'rad' && typeof value === 'number') return { value: value * DEGREES_PER_RAD, unit: 'deg' }
  return { value, unit: documentUnit(unit) }
}

/** Name of a unit in documents that machines read. */
export function documentUnit(unit: FigureUnit): string {
  return unit === 'rad' ? 'deg' : unit
}

function trimmed(number: string): string {
  return /^−?\d+\.\d+$/.test(number) ? number.replace(/0+$/, '').replace(/\.$/, '') : number
}
