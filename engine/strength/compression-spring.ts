/**
 * The coil of a compression or tension spring of round wire under a force.
 *
 *     τ = K 8 F D / (π d³)        C = D / d
 *     K_B = (4C + 2)/(4C − 3)      (Bergsträsser)              K_W = (4C − 1)/(4C − 4) + 0.615/C      (Wahl)
 *
 * Both corrections stand for the curvature of the coil and the direct shear; they differ by less than 1 %.
 * Buckling, with ends that bow a share α of the length:
 *
 *     λ = α L₀ / D        y = L₀ C₁ (1 − √(1 − C₂/λ²))        C₁ = E / (2 (E − G))        C₂ = 2π² (E − G) / (2G + E)
 *
 * Where C₂ > λ² it does not buckle however far it is pressed: for steel L₀ < 2.63 D / α.
 * Source: Shigley, Mechanical Engineering Design, chapter 10, from memory; J. A. Haringx 1948 for the buckling, from memory.
 */
import type { CoiledWire } from '../design/springs/coil.ts'

/** Bergsträsser's correction of the shear stress. */
export function bergstraesser(index: number): number {
  return (4 * index + 2) / (4 * index - 3)
}

/** Wahl's correction of the shear stress. */
export function wahl(index: number): number {
  return (4 * index - 1) / (4 * index - 4) + 0.615 / index
}

/** Direct shear alone: what counts under a steady load, where the peak at the inner side yields and is gone. */
export function directShear(index: number): number {
  return 1 + 0.5 / index
}

/** Shear stress at the inner side of the coil, MPa. @param correction `bergstraesser`, `wahl` or `directShear` of the index */
export function coilShear({ wire_mm, mean_mm }: CoiledWire, force_N: number, correction: number): number {
  return (correction * 8 * force_N * mean_mm) / (Math.PI * wire_mm ** 3)
}

/** Force at which the coil's inner side reaches a shear stress, N. */
export function coilForce({ wire_mm, mean_mm }: CoiledWire, shear_MPa: number, correction: number): number {
  return (shear_MPa * Math.PI * wire_mm ** 3) / (correction * 8 * mean_mm)
}

interface Upright extends CoiledWire {
  readonly modulus_MPa: number
  readonly shearModulus_MPa: number
  /** α: 0.5 both ends on flat parallel plates, 0.707 one plate and one pivot, 1 two pivots, 2 one free. */
  readonly ends: number
}

/** Largest free length that does not buckle under any deflection, mm. */
export function steadyLength({ mean_mm, modulus_MPa: e, shearModulus_MPa: g, ends }: Upright): number {
  return ((Math.PI * mean_mm) / ends) * Math.sqrt((2 * (e - g)) / (2 * g + e))
}

/** Deflection at which a compression spring buckles, mm; undefined where it does not. */
export function bucklingDeflection(coil: Upright, free_mm: number): number | undefined {
  const { mean_mm, modulus_MPa: e, shearModulus_MPa: g, ends } = coil
  const slenderness = (ends * free_mm) / mean_mm
  const inside = 1 - (2 * Math.PI ** 2 * (e - g)) / (2 * g + e) / slenderness ** 2
  return inside < 0 ? undefined : (free_mm * e * (1 - Math.sqrt(inside))) / (2 * (e - g))
}
