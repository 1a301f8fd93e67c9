/**
 * A helical compression spring of round wire.
 *
 *     k = G d⁴ / (8 D³ N_a)        τ = K 8 F D / (π d³)        C = D / d
 *     K_B = (4C + 2)/(4C − 3)      (Bergsträsser)              K_W = (4C − 1)/(4C − 4) + 0.615/C      (Wahl)
 *
 * Both corrections stand for the curvature of the coil and the direct shear; they differ by less than 1 %. A spring between flat and
 * parallel ends does not buckle while L₀ ≤ 2.63 D / α (steel; α = 0.5 for squared and ground ends on flat plates).
 * Source: Shigley, Mechanical Engineering Design, chapter 10, from memory; J. A. Haringx 1948 for the buckling, from memory.
 */

export interface CoiledWire {
  readonly wire_mm: number
  readonly mean_mm: number
}

/** Spring index C = D/d. Below 3 a coil cannot be wound without cracking its inner side (common practice). */
export function springIndex({ wire_mm, mean_mm }: CoiledWire): number {
  return mean_mm / wire_mm
}

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

/** Rate of a compression or tension spring, N/mm. @param coil shear modulus MPa, active turns */
export function helicalRate(coil: CoiledWire & { readonly shearModulus_MPa: number; readonly activeTurns: number }): number {
  return (coil.shearModulus_MPa * coil.wire_mm ** 4) / (8 * coil.mean_mm ** 3 * coil.activeTurns)
}

/** Shear stress at the inner side of the coil, MPa. @param correction `bergstraesser`, `wahl` or `directShear` of the index */
export function coilShear({ wire_mm, mean_mm }: CoiledWire, force_N: number, correction: number): number {
  return (correction * 8 * force_N * mean_mm) / (Math.PI * wire_mm ** 3)
}

/** Force at which the coil's inner side reaches a shear stress, N. */
export function coilForce({ wire_mm, mean_mm }: CoiledWire, shear_MPa: number, correction: number): number {
  return (shear_MPa * Math.PI * wire_mm ** 3) / (correction * 8 * mean_mm)
}

/**
 * Largest free length that does not buckle under any deflection, mm.
 *
 * @param ends α: 0.5 both ends on flat parallel plates, 0.707 one plate and one pivot, 1 two pivots, 2 one free
 */
export function steadyLength({ mean_mm }: CoiledWire, ends: number): number {
  return (2.63 * mean_mm) / ends
}
