/**
 * Jam of a toggle A-B-C in closed form, for springs that act elsewhere (derived in docs/theory/return.md).
 *
 *      h_A                             A-B carries no load and B-C is loaded at B and C only, so one line of force passes all
 *     ─(A)──────────(B)___ h_B         three pins, at heights h_A, h_B, h_C to the side that B bends to. At rest a height may
 *                        ‾‾‾(C)─ h_C   be anything within ± the friction circle; moving it is the circle's radius by sense.
 *
 * With L = A-B, a = B-C and δ the margin:   δ = asin((h_C − h_B) / a) + asin((h_A − h_B) / L)
 *
 * In an opening motion B's height is −ρ_B; A and C have +ρ where they turn opposite to B (in the order of the chain: A-B against
 * A's part, B-C against A-B, C's part against B-C) and −ρ where they turn the same way. The largest margin that any heights reach is the
 * jam from rest. Other pins change the size of the force and not its line, so they do not matter.
 */
export interface ToggleAtRest {
  /** A to B, mm. */
  readonly first_mm: number
  /** B to C, mm. */
  readonly arm_mm: number
  /** Radii of the friction circles, mm. */
  readonly levers_mm: { readonly a: number; readonly b: number; readonly c: number }
}

export interface ToggleMoving extends ToggleAtRest {
  /** Whether the pin turns opposite to B in the order of the chain: yes at both ends of a plain toggle on a fixed A. */
  readonly oppositeToB: { readonly a: boolean; readonly c: boolean }
}

/** Margin below which the toggle can rest for ever, rad; undefined where the circles reach past the arms: it jams at any margin. */
export function toggleJamAngle({ first_mm, arm_mm, levers_mm: { a, b, c } }: ToggleAtRest): number | undefined {
  return within(Math.asin((b + c) / arm_mm) + Math.asin((a + b) / first_mm))
}

/** Margin below which the toggle stops when moving, rad, negative past dead centre; undefined as above. */
export function toggleRunJamAngle(toggle: ToggleMoving): number | undefined {
  const { first_mm, arm_mm, levers_mm, oppositeToB } = toggle
  const a = oppositeToB.a ? levers_mm.a : -levers_mm.a
  const c = oppositeToB.c ? levers_mm.c : -levers_mm.c
  return within(Math.asin((levers_mm.b + c) / arm_mm) + Math.asin((levers_mm.b + a) / first_mm))
}

function within(angle_rad: number): number | undefined {
  return Number.isNaN(angle_rad) ? undefined : angle_rad
}
