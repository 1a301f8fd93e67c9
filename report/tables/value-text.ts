/**
 * How a value is set in print: the number by itself and its unit beside it, so that a page can set the unit in lighter ink
 * and a column of numbers lines up.
 */
import type { FigureUnit } from '../../engine/index.ts'

/** A value ready for print. `unit` is empty where there is none. */
export interface ValueText {
  readonly number: string
  readonly unit: string
}

const DEGREES_PER_RAD = 180 / Math.PI
const N_MM_PER_N_M = 1000

/** Fewest digits after the point that show `digits` significant ones, without an exponent; no minus before a zero. */
export function significant(value: number, digits: number): string {
  if (value === 0) return '0'
  const decimals = Math.max(0, digits - 1 - Math.floor(Math.log10(Math.abs(value))))
  const text = value.toFixed(Math.min(decimals, 6))
  return Number(text) === 0 ? '0' : text.replace('-', '−')
}

/** Sets a figure's value in metric workshop units with three significant digits, four above a thousand. */
export function setValue(value: number | boolean | string, unit: FigureUnit): ValueText {
  if (typeof value === 'boolean') return { number: value ? 'yes' : 'no', unit: '' }
  if (typeof value === 'string') return { number: value, unit: '' }
  if (unit === 'rad') return { number: fixed(value * DEGREES_PER_RAD, 2), unit: '°' }
  if (unit === 'mm') return { number: fixed(value, 2), unit: 'mm' }
  if (unit === 'N·mm' && Math.abs(value) >= N_MM_PER_N_M) return { number: significant(value / N_MM_PER_N_M, 3), unit: 'N·m' }
  return { number: significant(value, 3), unit: unit === '1' ? '' : unit }
}

/** Sets a value for the middle of a sentence: angles to a tenth of a degree, everything else to three digits at most. */
export function say(value: number | boolean | string, unit: FigureUnit): string {
  if (typeof value === 'number' && unit === 'rad') return `${fixed(value * DEGREES_PER_RAD, 1)}°`
  const text = setValue(value, unit)
  if (text.unit === '') return text.number
  return `${trimmed(text.number)} ${text.unit}`
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

function fixed(value: number, decimals: number): string {
  const text = value.toFixed(decimals)
  return Number(text) === 0 ? text.replace('-', '') : text.replace('-', '−')
}

function trimmed(number: string): string {
  return number.includes('.') ? number.replace(/0+$/, '').replace(/\.$/, '') : number
}
