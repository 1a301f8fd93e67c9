/**
 * Screws: preload by torque, stress area, stripping of threads. Metric and unified threads with flanks of 60°.
 *
 *     T = K F d,   K = [ (d₂/2)(tan ψ + μ sec 30°)/(1 − μ tan ψ sec 30°) + 0.625 μ_head d ] / d        tan ψ = p / (π d₂)
 *     A_t = π/4 ((d₂ + d₃)/2)² = π/4 (d − 0.938194 p)²
 *     A_s (internal) = π n D_s L [1/(2n) + tan 30° (D_s − E_n)]      A_s (external) = π n K_n L [1/(2n) + tan 30° (E_s − K_n)]
 *
 * Sources: Shigley, Mechanical Engineering Design, section 8-8, from memory; ISO 898-1 for the stress area, from memory; FED-STD-H28/2 for
 * the shear areas, from memory.
 */

export interface ScrewThread {
  readonly diameter_mm: number
  readonly pitch_mm: number
  readonly pitchDiameter_mm: number
}

const TAN_30 = Math.tan(Math.PI / 6)
const SEC_30 = 1 / Math.cos(Math.PI / 6)

/** Torque over preload and diameter. @param friction coefficients in the thread and under the head */
export function torqueCoefficient(
  { diameter_mm, pitch_mm, pitchDiameter_mm }: ScrewThread,
  friction: { readonly thread: number; readonly head: number },
): number {
  const lead = pitch_mm / (Math.PI * pitchDiameter_mm)
  const thread =
    (pitchDiameter_mm / (2 * diameter_mm)) * ((lead + friction.thread * SEC_30) / (1 - friction.thread * lead * SEC_30))
  return thread + 0.625 * friction.head
}

/** Stress area of a metric or unified thread, mm². */
export function stressArea({ diameter_mm, pitch_mm }: Pick<ScrewThread, 'diameter_mm' | 'pitch_mm'>): number {
  return (Math.PI / 4) * (diameter_mm - 0.938194 * pitch_mm) ** 2
}

export interface ThreadLimits {
  readonly pitch_mm: number
  /** Of the nut: largest minor and pitch diameters. */
  readonly minorMost_mm: number
  readonly internalPitchMost_mm: number
  /** Of the screw: least major and pitch diameters. */
  readonly majorLeast_mm: number
  readonly externalPitchLeast_mm: number
}

/** Areas that shear per length of engagement when threads strip, mm² per mm. */
export function strippingAreas(limits: ThreadLimits): { readonly internal_mm: number; readonly external_mm: number } {
  const { pitch_mm, minorMost_mm, internalPitchMost_mm, majorLeast_mm, externalPitchLeast_mm } = limits
  const internal_mm = ((Math.PI * majorLeast_mm) / pitch_mm) * (pitch_mm / 2 + TAN_30 * (majorLeast_mm - internalPitchMost_mm))
  const external_mm = ((Math.PI * minorMost_mm) / pitch_mm) * (pitch_mm / 2 + TAN_30 * (externalPitchLeast_mm - minorMost_mm))
  return { internal_mm, external_mm }
}
