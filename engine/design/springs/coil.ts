/**
 * Rates of coiled springs of round wire. Stresses stand in the folder of strength.
 *
 *     compression, tension   k = G d⁴ / (8 D³ N_a)                        N/mm
 *     torsion                k = E d⁴ / (10.8 D (N_b + (l₁ + l₂)/(3π D)))  N·mm per turn
 *
 * 10.8 is the trade's round number for 64/(2π) = 10.186 with the friction between coils and on the arbour.
 * Source: Shigley, Mechanical Engineering Design, sections 10-3 and 10-12, from memory.
 */

/** Turns per M D / (d⁴ E), with friction between the coils. */
const WITH_FRICTION = 10.8

/** A wire and the mean diameter of its coil. */
export interface CoiledWire {
  readonly wire_mm: number
  readonly mean_mm: number
}

/** A torsion spring's coil. */
export interface TorsionCoil extends CoiledWire {
  readonly modulus_MPa: number
  readonly bodyTurns: number
  /** Both legs together, from the coil to where they are pressed, mm. */
  readonly legs_mm: number
}

/** Spring index C = D/d. */
export function springIndex({ wire_mm, mean_mm }: CoiledWire): number {
  return mean_mm / wire_mm
}

/** Rate of a compression or tension spring, N/mm. @param coil shear modulus MPa, active turns */
export function helicalRate(coil: CoiledWire & { readonly shearModulus_MPa: number; readonly activeTurns: number }): number {
  return (coil.shearModulus_MPa * coil.wire_mm ** 4) / (8 * coil.mean_mm ** 3 * coil.activeTurns)
}

/** Turns that give way together with the body: its own, and what its legs count for. */
export function activeTurns({ bodyTurns, legs_mm, mean_mm }: Omit<TorsionCoil, 'modulus_MPa'>): number {
  return bodyTurns + legs_mm / (3 * Math.PI * mean_mm)
}

/** Rate of a torsion spring, N·mm per rad. */
export function torsionRate(coil: TorsionCoil): number {
  const perTurn = (coil.wire_mm ** 4 * coil.modulus_MPa) / (WITH_FRICTION * coil.mean_mm * activeTurns(coil))
  return perTurn / (2 * Math.PI)
}

/** Turns of the body alone under a moment: what draws the coil in. */
export function bodyTurnsUnder({ wire_mm, mean_mm, modulus_MPa, bodyTurns }: TorsionCoil, moment_Nmm: number): number {
  return (WITH_FRICTION * moment_Nmm * mean_mm * bodyTurns) / (wire_mm ** 4 * modulus_MPa)
}

/** How the ends of a compression spring are made: turns that do not give way, and turns that its solid length adds to its number of coils. */
export const COIL_ENDS = {
  plain: { dead: 0, solidMore: 1 },
  'plain ground': { dead: 1, solidMore: 0 },
  squared: { dead: 2, solidMore: 1 },
  'squared ground': { dead: 2, solidMore: 0 },
} as const

/** Ends of a compression spring, in words. */
export type CoilEnds = keyof typeof COIL_ENDS

/** Length of a compression spring with all coils touching, mm. */
export function solidLength(wire_mm: number, { coils, ends }: { readonly coils: number; readonly ends: CoilEnds }): number {
  return wire_mm * (coils + COIL_ENDS[ends].solidMore)
}

/** Active turns of a tension spring: the body's, and what full hooks add by twisting. @param moduli of the wire, MPa */
export function tensionTurns(
  bodyTurns: number,
  { modulus_MPa, shearModulus_MPa }: { readonly modulus_MPa: number; readonly shearModulus_MPa: number },
): number {
  return bodyTurns + shearModulus_MPa / modulus_MPa
}

/**
 * Range of the shear stress that close-winding can leave in the coil of a tension spring without load, MPa.
 *
 *     τ_i = 231 / exp(0.105 C) ± 6.9 (4 − (C − 3)/6.5)
 *
 * Source: Shigley, equation 10-41, from memory.
 */
export function windableInitial(index: number): { readonly least_MPa: number; readonly most_MPa: number } {
  const middle = 231 / Math.exp(0.105 * index)
  const half = 6.9 * (4 - (index - 3) / 6.5)
  return { least_MPa: middle - half, most_MPa: middle + half }
}
