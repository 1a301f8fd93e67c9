/**
 * TEST SUPPORT. Two curved bodies pressed together at a point (Hertz): the exact ellipse, of which the line contact is the limit.
 *
 *     A = p₀/E* · b/(e² a²) · (K − E)      B = p₀/E* · b/(a² e²) · (a²/b² E − K)      e² = 1 − b²/a²,   p₀ = 3 F / (2 π a b)
 *
 * with K and E the complete elliptic integrals of e. Source: K. L. Johnson, Contact Mechanics (1985), section 4.2, from memory.
 */

/** What is pressed: the two curvatures of the gap, 2 A and 2 B with A the smaller, and 1/E* of both bodies together. */
export interface EllipseAsked {
  readonly force_N: number
  readonly alongCurvature_1_mm: number
  readonly acrossCurvature_1_mm: number
  readonly softness_1_MPa: number
}

export interface Ellipse {
  readonly a_mm: number
  readonly b_mm: number
  readonly pressure_MPa: number
}

/** The ellipse of contact. */
export function ellipticalContact(asked: EllipseAsked): Ellipse {
  const A = asked.alongCurvature_1_mm / 2
  const ratio = asked.acrossCurvature_1_mm / asked.alongCurvature_1_mm
  // The axes are found by halving: B/A grows with a/b.
  let [round, long] = [1 + 1e-9, 1e7]
  for (let step = 0; step < 200; step++) {
    const middle = Math.sqrt(round * long)
    if (curvatureRatio(middle) < ratio) round = middle
    else long = middle
  }
  const { K, E, e2 } = integralsOf(round)
  const a_mm = Math.cbrt((3 * asked.force_N * asked.softness_1_MPa * (K - E)) / (2 * Math.PI * e2 * A))
  const b_mm = a_mm / round
  return { a_mm, b_mm, pressure_MPa: (3 * asked.force_N) / (2 * Math.PI * a_mm * b_mm) }
}

function curvatureRatio(slenderness: number): number {
  const { K, E } = integralsOf(slenderness)
  return (slenderness ** 2 * E - K) / (K - E)
}

/** By the mean of arithmetic and geometric mean (Abramowitz & Stegun, 17.6, from memory). */
function integralsOf(slenderness: number): { readonly K: number; readonly E: number; readonly e2: number } {
  const e2 = 1 - 1 / slenderness ** 2
  let [a, g, c, power, sum] = [1, 1 / slenderness, Math.sqrt(e2), 0.5, 0.5 * e2]
  while (Math.abs(c) > 1e-16) {
    const mean = (a + g) / 2
    c = (a - g) / 2
    g = Math.sqrt(a * g)
    a = mean
    power *= 2
    sum += power * c * c
  }
  const K = Math.PI / (2 * a)
  return { K, E: K * (1 - sum), e2 }
}
