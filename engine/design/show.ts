import { inch_mm, poundForce_N } from '../numbers/unit.ts'
import type { FigureUnit } from './figure-names.ts'

/** What the reader wants to see. What is stored is what was typed; this changes the showing only. */
export type UnitSystem = 'metric' | 'inch'

/** A value ready for print, number and unit apart. `unit` is empty where there is none. */
export interface Shown {
  readonly number: string
  readonly unit: string
}

const degreesInRadian = 180 / Math.PI
/** Places of the travel are found to this angle; what is smaller is no turn. */
const angleLeast_rad = 1e-9
const Nmm_per_Nm = 1000
const inchPound_Nmm = inch_mm * poundForce_N
const ksi_MPa = (1000 * poundForce_N) / inch_mm ** 2

/** Below this a plain decimal would be a row of zeros. */
const plainLeast = 1e-4
/** From here on a plain decimal would pretend to more digits than are shown. */
const plainMost = 1e9

/** A number with `digits` significant digits, whole places kept, and a true minus sign; `0` for what rounds to nothing. */
export function significant(value: number, digits: number): string {
  if (!Number.isFinite(value)) throw new Error(`a value to show is ${value}`)
  const rounded = Number(value.toPrecision(digits))
  if (rounded === 0) return '0'
  const size = Math.abs(rounded)
  const text =
    size < plainLeast || size >= plainMost
      ? scientific(rounded, digits)
      : rounded.toFixed(Math.max(0, digits - 1 - Math.floor(Math.log10(size))))
  return text.replaceAll('-', '−')
}

function scientific(value: number, digits: number): string {
  const [mantissa, exponent] = value.toExponential(digits - 1).split('e')
  const raised = [...String(Number(exponent))].map((digit) => (digit === '-' ? '⁻' : '⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(digit)])).join('')
  return `${mantissa}·10${raised}`
}

/** Units in which a figure is shown, with how many of them make one inside unit. */
function shownUnit(
  unit: FigureUnit,
  { size, system }: { readonly size: number; readonly system: UnitSystem },
): readonly [string, number] {
  const isInch = system === 'inch'
  switch (unit) {
    case 'rad':
      return ['°', degreesInRadian]
    case 'mm':
      return isInch ? ['in', 1 / inch_mm] : ['mm', 1]
    case 'N':
      return isInch ? ['lbf', 1 / poundForce_N] : ['N', 1]
    case 'N·mm':
      if (isInch) return ['in·lbf', 1 / inchPound_Nmm]
      return size >= Nmm_per_Nm ? ['N·m', 1 / Nmm_per_Nm] : ['N·mm', 1]
    case 'N·mm per pin':
      return isInch ? ['in·lbf per pin', 1 / inchPound_Nmm] : ['N·mm per pin', 1]
    case 'MPa':
      return isInch ? ['ksi', 1 / ksi_MPa] : ['MPa', 1]
    default:
      return ['', 1]
  }
}

/** The one unit in which a whole axis of values is read, whatever their size, with how many of it make one inside unit. */
export function axisUnit(unit: FigureUnit, system: UnitSystem = 'metric'): { readonly unit: string; readonly factor: number } {
  const [name, factor] = shownUnit(unit, { size: 0, system })
  return { unit: name, factor }
}

/**
 * A figure's value as number and unit, for tables that set the two apart.
 *
 * @param value in the inside unit `unit`; finite. Yes or no and words come back as words without unit
 * @param how system of units (metric unless told) and significant digits (3 unless told)
 */
export function shownFigure(
  value: number | boolean | string,
  unit: FigureUnit,
  { system = 'metric', digits = 3 }: { readonly system?: UnitSystem; readonly digits?: number } = {},
): Shown {
  if (typeof value === 'boolean') return { number: value ? 'yes' : 'no', unit: '' }
  if (typeof value === 'string') return { number: value, unit: '' }
  const [name, factor] = shownUnit(unit, { size: Math.abs(value), system })
  const isNoTurn = unit === 'rad' && Math.abs(value) < angleLeast_rad
  return { number: isNoTurn ? '0' : significant(value * factor, digits), unit: name }
}

/** A figure's value in one text, such as `8.72°`, `2.85 N·m`, `yes`. */
export function showFigure(value: number | boolean | string, unit: FigureUnit, system: UnitSystem = 'metric'): string {
  const shown = shownFigure(value, unit, { system })
  return shown.unit === '°' ? `${shown.number}°` : [shown.number, shown.unit].filter((text) => text !== '').join(' ')
}
