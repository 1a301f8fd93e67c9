/**
 * A section of a phalanx that is pushed out of the plane: bent about its weak axis, twisted and sheared.
 *
 *        ┌───┐   ┌───┐
 *        │   │   │   │  h     bending   σ = 6 M b / (h Σ b³)
 *        └───┘   └───┘        twist     τ = T s / Σ (l s³ / (3 + 1.8 s/l)),   s, l the short and the long side
 *          b       b          shear     τ = 1.5 F / (h Σ b)
 *
 * The slices of a part are taken as bars beside each other with nothing between them: each bends and twists by itself, with a share by its
 * stiffness. A web that joins them makes the part stronger, so this is the safe side. Bending and shear are charged at one place.
 *
 * Source: Shigley, Mechanical Engineering Design, eq. 3-40 (twist of a rectangle after Young, within 2 %), from memory; compared with the
 * series of Saint-Venant (tested).
 */

export interface SidePush {
  readonly bending_Nmm: number
  readonly twist_Nmm: number
  readonly shear_N: number
}

/** A section: its height in the plane and the widths of its slices across the finger, mm. */
export interface SideBars {
  readonly height_mm: number
  readonly widths_mm: readonly number[]
}

/** Stress in tension that is as bad as all of it together (von Mises), MPa; infinite where nothing is left of the section. */
export function sideStress({ bending_Nmm, twist_Nmm, shear_N }: SidePush, { height_mm, widths_mm }: SideBars): number {
  if (!(height_mm > 0)) return Number.POSITIVE_INFINITY
  const widest = Math.max(...widths_mm)
  const cubes = widths_mm.reduce((sum, width) => sum + width ** 3, 0)
  const area = height_mm * widths_mm.reduce((sum, width) => sum + width, 0)
  const bent = (6 * Math.abs(bending_Nmm) * widest) / (height_mm * cubes)
  const sheared = (SHEAR_PEAK_ratio * Math.abs(shear_N)) / area + twistStress(Math.abs(twist_Nmm), { height_mm, widths_mm })
  return Math.sqrt(bent ** 2 + 3 * sheared ** 2)
}

/** Peak over mean shear stress in a rectangle. */
const SHEAR_PEAK_ratio = 1.5

/** Largest shear stress of bars that are twisted together, MPa. */
export function twistStress(twist_Nmm: number, { height_mm, widths_mm }: SideBars): number {
  const shorts = widths_mm.map((width) => Math.min(width, height_mm))
  const stiffness = widths_mm.reduce((sum, width, index) => {
    const long = Math.max(width, height_mm)
    return sum + (long * shorts[index] ** 3) / (3 + (1.8 * shorts[index]) / long)
  }, 0)
  return (twist_Nmm * Math.max(...shorts)) / stiffness
}
