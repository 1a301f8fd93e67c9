/**
 * Least axial force at which a straight bar with pinned ends gives way sideways.
 *
 *     slenderness  λ = l / k,  k = √(I/A)          λ₁ = √(2 π² E / S_y)
 *     Euler    P = π² E A / λ²                     λ ≥ λ₁
 *     Johnson  P = A (S_y − (S_y λ / 2π)² / E)     λ < λ₁: the bar yields before Euler's force
 *
 * Both meet at λ₁ in value and in slope. Source: J. B. Johnson's parabola as in Shigley, Mechanical Engineering Design, section 4-12 to
 * 4-13, from memory. Ends that are held more firmly than by pins carry more.
 */

export interface ColumnAsked {
  readonly length_mm: number
  readonly area_mm2: number
  /** Least second moment of the section. */
  readonly secondMoment_mm4: number
  readonly modulus_MPa: number
  readonly yield_MPa: number
}

export interface Column {
  readonly force_N: number
  readonly slenderness: number
  readonly by: 'Euler' | 'Johnson'
}

/** Critical force of a bar with pinned ends. Cannot fail for sizes above zero. */
export function column({ length_mm, area_mm2, secondMoment_mm4, modulus_MPa, yield_MPa }: ColumnAsked): Column {
  const slenderness = length_mm / Math.sqrt(secondMoment_mm4 / area_mm2)
  const limit = Math.sqrt((2 * Math.PI ** 2 * modulus_MPa) / yield_MPa)
  if (slenderness >= limit) {
    return { force_N: (Math.PI ** 2 * modulus_MPa * area_mm2) / slenderness ** 2, slenderness, by: 'Euler' }
  }
  const lost = ((yield_MPa * slenderness) / (2 * Math.PI)) ** 2 / modulus_MPa
  return { force_N: area_mm2 * (yield_MPa - lost), slenderness, by: 'Johnson' }
}
