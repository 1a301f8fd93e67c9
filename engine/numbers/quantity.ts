import { readExpression } from './expression.ts'
import type { Fault, Read } from './fault.ts'
import { limits } from './limits.ts'
import { type Measured, measure, type Names } from './measure.ts'
import { type Powers, plainNumber, powersText, samePowers } from './powers.ts'

/** What a place of the document asks for. */
export type QuantityKind =
  | 'length'
  | 'angle'
  | 'force'
  | 'couple'
  | 'springRate'
  | 'torsionRate'
  | 'pressure'
  | 'mass'
  | 'density'
  | 'wearRate'
  | 'number'

interface KindRow {
  readonly words: string
  readonly example: string
  readonly powers: Powers
  /** Unit that the design stores. */
  readonly inside: string
  /** Inside units in one base unit: a tonne, the base unit of mass in mm, N and s, is 1000 kg. */
  readonly scale: number
  /** Largest value either way, in inside units. */
  readonly most: number
}

const powers = (length: number, force: number, time = 0, angle = 0): Powers => ({ length, force, time, angle })

const kinds: Readonly<Record<QuantityKind, KindRow>> = {
  length: { words: 'a length', example: '3 mm', powers: powers(1, 0), inside: 'mm', scale: 1, most: limits.length_mm },
  angle: { words: 'an angle', example: '7 deg', powers: powers(0, 0, 0, 1), inside: 'rad', scale: 1, most: limits.angle_rad },
  force: { words: 'a force', example: '60 N', powers: powers(0, 1), inside: 'N', scale: 1, most: limits.force_N },
  couple: { words: 'a couple', example: '60 N*mm', powers: powers(1, 1), inside: 'N·mm', scale: 1, most: limits.couple_Nmm },
  springRate: {
    words: 'a spring rate',
    example: '2 N/mm',
    powers: powers(-1, 1),
    inside: 'N/mm',
    scale: 1,
    most: limits.springRate_N_mm,
  },
  torsionRate: {
    words: 'a torsion rate',
    example: '0.9 N*mm/deg',
    powers: powers(1, 1, 0, -1),
    inside: 'N·mm/rad',
    scale: 1,
    most: limits.torsionRate_Nmm_rad,
  },
  pressure: { words: 'a stress', example: '71 GPa', powers: powers(-2, 1), inside: 'MPa', scale: 1, most: limits.pressure_MPa },
  mass: { words: 'a mass', example: '15 g', powers: powers(-1, 1, 2), inside: 'kg', scale: 1000, most: limits.mass_kg },
  density: {
    words: 'a density',
    example: '2.7 g/cm^3',
    powers: powers(-4, 1, 2),
    inside: 'kg/mm³',
    scale: 1000,
    most: limits.density_kg_mm3,
  },
  wearRate: {
    words: 'a rate of wear',
    example: '1e-6 mm^3/N/m',
    powers: powers(2, -1),
    inside: 'mm²/N',
    scale: 1,
    most: limits.wearRate_mm2_N,
  },
  number: { words: 'a plain number', example: '0.12', powers: plainNumber, inside: '1', scale: 1, most: limits.number },
}

const kindNames = Object.keys(kinds) as readonly QuantityKind[]

/** In words with an example, such as `a length, such as 3 mm`. */
export function kindWords(kind: QuantityKind): string {
  return `${kinds[kind].words}, such as ${kinds[kind].example}`
}

/** Name of the unit that the design stores for a kind. */
export function insideUnit(kind: QuantityKind): string {
  return kinds[kind].inside
}

/** The kind that has these powers, if a place of the document can ask for it. */
export function kindOf(measured: Powers): QuantityKind | undefined {
  return kindNames.find((kind) => samePowers(kinds[kind].powers, measured))
}

/** From base units to the inside unit of `kind`. */
export function insideValue(measured: Measured, kind: QuantityKind): number {
  return measured.value * kinds[kind].scale
}

/** From the inside unit of `kind` to base units. */
export function baseValue(value: number, kind: QuantityKind): number {
  return value / kinds[kind].scale
}

/**
 * Reads a typed quantity or expression of one kind.
 *
 * @param text as typed, such as `1/4 in` or `proximalLength - 1 mm`
 * @param names values of the dimensions it may use
 * @returns the value in the inside unit of `kind` (mm, rad, N, N·mm, N/mm, N·mm/rad, MPa, kg, kg/mm³, 1), always finite
 *          and within the limits; or the first fault with its column
 */
export function parseQuantity(text: string, kind: QuantityKind, names: Names = new Map()): Read<number> {
  const expression = readExpression(text)
  if (expression.fault) return expression
  const measured = measure(expression.value, names)
  if (measured.fault) return measured
  return asKind(measured.value, kind)
}

/** A measured value as the inside value of a kind; refused when it is of another kind or beyond the limit. */
export function asKind(measured: Measured, kind: QuantityKind): Read<number> {
  const row = kinds[kind]
  if (!samePowers(measured.powers, row.powers)) return { fault: wrongKind(measured.powers, kind) }
  const value = insideValue(measured, kind)
  if (Math.abs(value) > row.most) return { fault: beyondLimit(value, row) }
  return { value }
}

function wrongKind(found: Powers, kind: QuantityKind): Fault {
  const other = kindOf(found)
  const words = other === undefined ? `a quantity in ${powersText(found)}` : `${kinds[other].words} (${kinds[other].inside})`
  const wayOut = mixUp(other, kind)
  return {
    code: 'wrong unit',
    column: 1,
    found: other === 'number' ? 'a plain number' : words,
    needed: kindWords(kind),
    ...(wayOut && { wayOut }),
  }
}

function mixUp(found: QuantityKind | undefined, needed: QuantityKind): string | undefined {
  if (found === 'number') return `Give it a unit, such as ${kinds[needed].example}.`
  if (found === 'mass' && needed === 'force') return 'A force is typed in N, lbf or kgf; lb, g and kg are masses.'
  if (found === 'force' && needed === 'mass') return 'A mass is typed in g, kg, lb or oz.'
  if (found === 'couple' && needed === 'torsionRate') return 'Divide it by an angle, as in 0.9 N*mm/deg.'
  if (found === 'force' && needed === 'couple') return 'Multiply it by its lever, as in 60 N*mm.'
  return undefined
}

function beyondLimit(value: number, row: KindRow): Fault {
  return {
    code: 'too large',
    column: 1,
    found: `${Number(value.toPrecision(6))} ${row.inside}`,
    needed: `at most ${row.most} ${row.inside} either way`,
  }
}
