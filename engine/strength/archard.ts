/**
 * Wear of two surfaces that slide on each other (Archard): V = K F s / H.
 *
 * Source: J. F. Archard 1953, from memory. K is known to an order of magnitude at best.
 *
 * @returns volume lost by the softer surface, mm³
 */
export function archardVolume(slid: {
  /** Wear coefficient, without a unit. */
  readonly coefficient: number
  readonly force_N: number
  /** Way slid, mm. */
  readonly way_mm: number
  /** Hardness of the softer surface, MPa. */
  readonly hardness_MPa: number
}): number {
  return (slid.coefficient * slid.force_N * slid.way_mm) / slid.hardness_MPa
}
