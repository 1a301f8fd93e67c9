/**
 * Stress concentration of a round hole in the middle of a strip under tension, on the net section.
 *
 * Heywood: K_t = 2 + (1 − d/w)³. Source: R. B. Heywood, Designing against Fatigue (1962), from memory; within 1.6 % of the polynomial of
 * Peterson (3.00 − 3.13 r + 3.66 r² − 1.53 r³) up to d/w = 0.5.
 *
 * @param diameter_ratio d/w, 0 to below 1
 * @returns peak stress over the mean stress of the net section
 */
export function holeInStrip(diameter_ratio: number): number {
  return 2 + (1 - diameter_ratio) ** 3
}
