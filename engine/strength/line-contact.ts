/**
 * Two cylinders pressed together along a line (Hertz): a round against a flat, in a socket, or on another round.
 *
 *     1/R = 1/R₁ ± 1/R₂       + another round, − a socket, R₂ = ∞ a flat
 *     1/E* = (1 − ν₁²)/E₁ + (1 − ν₂²)/E₂
 *     p₀ = √(P E* / (π R)),   b = √(4 P R / (π E*))             P force per length
 *
 * Under the middle of the contact the largest shear stress is 0.300 p₀, at 0.786 b below the surface. Source: K. L. Johnson, Contact
 * Mechanics (1985), section 4.2(c), from memory.
 *
 * Friction that is about to give pulls at the surface with μ p. It moves the place of the largest shear up and to the side and raises it:
 *
 *     τ / p₀ = 0.300 + 0.435 μ² + 0.704 μ⁴    below the surface;    μ    all over the surface, which is more above μ = 0.376
 *
 * The fit is ours, within 0.0005 of the stresses summed over the contact (tested); that the shear is even over the surface: Johnson, section 7.1(b),
 * from memory, and tested.
 */

export interface ContactBody {
  readonly modulus_MPa: number
  readonly poisson: number
}

export interface LineContactAsked {
  readonly force_N: number
  readonly length_mm: number
  /** 1/R of both together, 1/mm; above zero. A flat adds nothing, a socket takes away. */
  readonly curvature_1_mm: number
  readonly bodies: readonly [ContactBody, ContactBody]
  /** Most that the friction of the two may come to, over the pressure. */
  readonly friction_ratio: number
}

export interface LineContact {
  readonly halfWidth_mm: number
  /** p₀, in the middle of the contact. */
  readonly pressure_MPa: number
  /** Largest shear stress, below the surface or at it. */
  readonly shear_MPa: number
}

/** Largest shear over p₀ and its depth over b, for ν = 0.3; they do not depend on ν in the plane of the contact. */
export const SHEAR_BELOW_LINE_ratio = 0.3003

/** What friction adds to it, by its square and fourth power. */
const RUBBED_SQUARE = 0.435
const RUBBED_FOURTH = 0.704

/** Friction from which the surface shears most: where the curve below it meets that at it. */
const AT_SURFACE_ratio = 0.376

/** Largest shear over p₀ of a contact with friction that is about to give. */
export function shearOverPressure(friction_ratio: number): number {
  if (friction_ratio > AT_SURFACE_ratio) return friction_ratio
  return SHEAR_BELOW_LINE_ratio + RUBBED_SQUARE * friction_ratio ** 2 + RUBBED_FOURTH * friction_ratio ** 4
}

/** Stress of a line contact. Cannot fail for a force of zero or more and sizes above zero. */
export function lineContact({ force_N, length_mm, curvature_1_mm, bodies, friction_ratio }: LineContactAsked): LineContact {
  const softness = bodies.reduce((sum, { modulus_MPa, poisson }) => sum + (1 - poisson * poisson) / modulus_MPa, 0)
  const line = force_N / length_mm
  const pressure_MPa = Math.sqrt((line * curvature_1_mm) / (Math.PI * softness))
  const halfWidth_mm = Math.sqrt((4 * line * softness) / (Math.PI * curvature_1_mm))
  return { halfWidth_mm, pressure_MPa, shear_MPa: shearOverPressure(friction_ratio) * pressure_MPa }
}
