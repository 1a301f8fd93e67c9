/**
 * A stress that comes and goes, against what is borne for so many cycles (Goodman).
 *
 *     amplitude                                σ_a / S_N + σ_m / S_ut = 1 / n
 *        S_N ╲
 *             ╲    ● (σ_m, σ_a)
 *              ╲                               a load that grows moves the point outwards from 0
 *               ╲
 *        ────────╲─── mean   S_ut
 *
 * Source: Shigley, Mechanical Engineering Design, section 6-12, from memory; read in Bhandari, Design of Machine Elements, ex. 5.12.
 */
import type { Limit } from './margin.ts'

/** The largest and the least that a stress comes to, tension positive, MPa. */
export interface Swing {
  readonly most_MPa: number
  readonly least_MPa: number
}

/** What a material bears, MPa: an amplitude alone for the cycles asked, and a steady stress. */
export interface Borne {
  readonly strength_MPa: number
  readonly ultimate_MPa: number
}

/**
 * The amplitude without a mean stress that is as bad as a swing, when both grow together: σ_a + σ_m S_N / S_ut, MPa.
 * A mean in compression is given no credit.
 */
export function amplitudeAlone({ most_MPa, least_MPa }: Swing, { strength_MPa, ultimate_MPa }: Borne): number {
  const mean = Math.max(0, (most_MPa + least_MPa) / 2)
  return (most_MPa - least_MPa) / 2 + (mean * strength_MPa) / ultimate_MPa
}

/** The limit of a swing. @param factor on both of its stresses */
export function fatigueLimit(swing: Swing, borne: Borne, factor: number): Limit {
  return { says: 'cracks', stress: amplitudeAlone(swing, borne), allowable: borne.strength_MPa, factor }
}
