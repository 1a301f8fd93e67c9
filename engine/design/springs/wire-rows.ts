/**
 * Spring wire from the table: strength by diameter, stiffness, and the shares of the strength that a spring may use.
 *
 *     S_ut = A / d^m
 *
 * Sources stand in each row of the table.
 */
import diameterRows from '../../../tables/wire-diameters.json' with { type: 'json' }
import wireRows from '../../../tables/wires.json' with { type: 'json' }
import { parseQuantity, type QuantityKind } from '../../numbers/quantity.ts'

/** Tensile strength over a range of diameters. */
export interface WireStrength {
  /** MPa · mm^m. */
  readonly a: number
  readonly m: number
  /** Diameters that it holds for, mm. */
  readonly from_mm: number
  readonly to_mm: number
}

/** Share of the tensile strength that a stress going from nothing to its most and back may reach, for a number of times. */
export interface CycledShare {
  readonly cycles: number
  readonly plain: number
  readonly peened: number
}

/** Alternating and mean shear stress that a coil bears without end. */
export interface EndlessShear {
  readonly amplitude_MPa: number
  readonly mean_MPa: number
}

/** One kind of wire. Shares are of its tensile strength; what nobody has stated is absent. */
export interface Wire {
  readonly name: string
  readonly standard: string
  readonly strength: readonly WireStrength[]
  /** By rising diameter; the last holds for all that are thicker. */
  readonly moduli: readonly { readonly to_mm: number; readonly modulus_MPa: number; readonly shearModulus_MPa: number }[]
  /** Bending stress of a torsion spring that leaves no set. */
  readonly bendingYield: number
  /** Shear stress of a coil that leaves no set, as wound and after its set was pressed out. */
  readonly shear: { readonly asWound: number; readonly setRemoved: number }
  /** At the hooks of a tension spring. */
  readonly hook: { readonly shear: number; readonly bending: number }
  readonly cycledBending?: readonly CycledShare[]
  readonly cycledShear?: readonly CycledShare[]
  readonly cycledHook?: readonly { readonly cycles: number; readonly shear: number; readonly bending: number }[]
  readonly endless?: { readonly plain: EndlessShear; readonly peened: EndlessShear }
  readonly source: string
}

function tableValue(text: string, kind: QuantityKind): number {
  const read = parseQuantity(text, kind)
  if (read.fault) throw new Error(`table of wires: ${text}: ${read.fault.found}`)
  return read.value
}

type TypedRow = Omit<Wire, 'strength' | 'moduli' | 'endless'> & {
  readonly strength: readonly { readonly from: string; readonly to: string; readonly a: number; readonly m: number }[]
  readonly moduli: readonly { readonly to?: string; readonly modulus: string; readonly shearModulus: string }[]
  readonly endless?: Readonly<Record<'plain' | 'peened', { readonly amplitude: string; readonly mean: string }>>
}

function wireOf({ strength, moduli, endless, ...rest }: TypedRow): Wire {
  const length = (text: string) => tableValue(text, 'length')
  const stress = (text: string) => tableValue(text, 'pressure')
  const shear = (typed: { readonly amplitude: string; readonly mean: string }): EndlessShear => ({
    amplitude_MPa: stress(typed.amplitude),
    mean_MPa: stress(typed.mean),
  })
  return {
    ...rest,
    strength: strength.map(({ from, to, a, m }) => ({ from_mm: length(from), to_mm: length(to), a, m })),
    moduli: moduli.map(({ to, modulus, shearModulus }) => ({
      to_mm: to === undefined ? Number.POSITIVE_INFINITY : length(to),
      modulus_MPa: stress(modulus),
      shearModulus_MPa: stress(shearModulus),
    })),
    ...(endless && { endless: { plain: shear(endless.plain), peened: shear(endless.peened) } }),
  }
}

/** Kinds of wire in the order of the table. */
export const wires: readonly Wire[] = (wireRows as readonly TypedRow[]).map(wireOf)

/** Diameters in which wire is sold, mm, ascending. */
export const usualDiameters_mm: readonly number[] = diameterRows.flatMap(({ diameters }) =>
  diameters.map((typed) => tableValue(typed, 'length')),
)

/** Tensile strength of a wire, MPa; undefined outside of the diameters that its row holds for. */
export function wireStrength({ strength }: Pick<Wire, 'strength'>, diameter_mm: number): number | undefined {
  const row = strength.find(({ from_mm, to_mm }) => diameter_mm >= from_mm && diameter_mm <= to_mm)
  return row && row.a / diameter_mm ** row.m
}

/** Moduli of a wire, MPa. */
export function wireModuli(
  { moduli }: Pick<Wire, 'moduli'>,
  diameter_mm: number,
): { readonly modulus_MPa: number; readonly shearModulus_MPa: number } {
  return moduli.find(({ to_mm }) => diameter_mm <= to_mm) ?? moduli[moduli.length - 1]
}
