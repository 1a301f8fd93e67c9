/**
 * The units that may be typed, in mm, N, s and rad.
 *
 * SOURCE standard ISO 80000-3:2019 and -4:2019 and NIST SP 811 (2008) appendix B: inch 25.4 mm exactly, avoirdupois
 * pound 0.45359237 kg exactly, standard gravity 9.80665 m/s² exactly, hence pound-force 4.4482216152605 N exactly; from memory.
 */
import { multiplied, type Powers, plainNumber, raised } from './powers.ts'

/** One typed unit is `times / over` inside units; two numbers, because 1/1000 has no exact double but 1000 has. */
export interface Unit {
  readonly times: number
  readonly over: number
  readonly powers: Powers
}

const length: Powers = { ...plainNumber, length: 1 }
const force: Powers = { ...plainNumber, force: 1 }
const time: Powers = { ...plainNumber, time: 1 }
const angle: Powers = { ...plainNumber, angle: 1 }
const couple = multiplied(force, length)
const pressure = multiplied(force, length, -2)
const mass = multiplied(multiplied(force, raised(time, 2)), length, -1)

/** An inch, exactly. */
export const inch_mm = 25.4
/** A pound-force, exactly. */
export const poundForce_N = 4.4482216152605
const pound_kg = 0.45359237
const kilogramForce_N = 9.80665

const unit = (powers: Powers, times: number, over = 1): Unit => ({ times, over, powers })

/** A pascal is 1e-6 N/mm²; a kilogram is 1e-3 N·s²/mm. */
const units: ReadonlyMap<string, Unit> = new Map([
  ['um', unit(length, 1, 1000)],
  ['µm', unit(length, 1, 1000)],
  ['μm', unit(length, 1, 1000)],
  ['mm', unit(length, 1)],
  ['cm', unit(length, 10)],
  ['m', unit(length, 1000)],
  ['thou', unit(length, inch_mm, 1000)],
  ['in', unit(length, inch_mm)],
  ['"', unit(length, inch_mm)],
  ['″', unit(length, inch_mm)],
  ['ft', unit(length, 12 * inch_mm)],
  ['rad', unit(angle, 1)],
  ['mrad', unit(angle, 1, 1000)],
  ['deg', unit(angle, Math.PI, 180)],
  ['°', unit(angle, Math.PI, 180)],
  ['mN', unit(force, 1, 1000)],
  ['N', unit(force, 1)],
  ['kN', unit(force, 1000)],
  ['kgf', unit(force, kilogramForce_N)],
  ['lbf', unit(force, poundForce_N)],
  ['ozf', unit(force, poundForce_N, 16)],
  ['Nmm', unit(couple, 1)],
  ['Nm', unit(couple, 1000)],
  ['Pa', unit(pressure, 1, 1_000_000)],
  ['kPa', unit(pressure, 1, 1000)],
  ['MPa', unit(pressure, 1)],
  ['GPa', unit(pressure, 1000)],
  ['psi', unit(pressure, poundForce_N, inch_mm * inch_mm)],
  ['ksi', unit(pressure, 1000 * poundForce_N, inch_mm * inch_mm)],
  ['mg', unit(mass, 1, 1e9)],
  ['g', unit(mass, 1, 1e6)],
  ['kg', unit(mass, 1, 1000)],
  ['lb', unit(mass, pound_kg, 1000)],
  ['oz', unit(mass, pound_kg, 16_000)],
  ['ms', unit(time, 1, 1000)],
  ['s', unit(time, 1)],
  ['%', unit(plainNumber, 1, 100)],
])

/** The unit of that name; names keep their case, as in MPa and mm. */
export function findUnit(name: string): Unit | undefined {
  return units.get(name)
}

/** Names of all units that may be typed. */
export const unitNames: readonly string[] = [...units.keys()]
