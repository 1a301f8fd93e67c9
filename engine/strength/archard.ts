/**
 * Wear of two surfaces that slide on each other (Archard): V = K F s / H = k F s.
 *
 * Source: J. F. Archard 1953, from memory. K and k are known to an order of magnitude at best.
 */

/** @returns volume lost by the softer surface, mm³ */
export function archardVolume(slid: {
  /** Wear coefficient, without a unit. */
  readonly coefficient: number
  readonly force_N: number
  /** Way slid, mm. */
  readonly way_mm: number
  /** Hardness of the softer surface, MPa. */
  readonly hardness_MPa: number
}): number {
  return rubbedVolume(slid.coefficient / slid.hardness_MPa, slid.force_N * slid.way_mm)
}

/**
 * Volume lost by a pair of surfaces, mm³.
 *
 * @param rate_mm2_N specific rate of wear k = K/H
 * @param rubbed_Nmm force times way, summed over the way; friction does μ times as much work
 */
export function rubbedVolume(rate_mm2_N: number, rubbed_Nmm: number): number {
  return rate_mm2_N * rubbed_Nmm
}
