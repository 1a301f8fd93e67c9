/**
 * Strength of spring wire by its diameter.
 *
 *     S_ut = A / d^m
 *
 * Source: Shigley, Mechanical Engineering Design, table 10-4 (after a table of the spring makers), from memory; the rows of music,
 * oil-tempered and hard-drawn wire read in worked examples that use them. Moduli: table 10-5, from memory.
 */

export interface WireStrength {
  /** MPa · mm^m. */
  readonly a: number
  readonly m: number
  /** Diameters that the row holds for, mm. */
  readonly from_mm: number
  readonly to_mm: number
}

/** Tensile strength of a wire, MPa; undefined outside of the diameters that its row holds for. */
export function wireStrength({ a, m, from_mm, to_mm }: WireStrength, diameter_mm: number): number | undefined {
  if (diameter_mm < from_mm || diameter_mm > to_mm) return undefined
  return a / diameter_mm ** m
}
