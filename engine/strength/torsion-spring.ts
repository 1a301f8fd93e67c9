/**
 * A helical torsion spring of round wire, its legs pressed at their ends.
 *
 *     σ = K_i 32 M / (π d³)             K_i = (4C² − C − 1) / (4C (C − 1))     the inner side, where winding up presses
 *     turns under M   body: 10.8 M D N_b / (d⁴ E)       legs: 10.8 M D (l₁ + l₂)/(3π D) / (d⁴ E)
 *
 * 10.8 is the trade's round number for 64/(2π) = 10.186 with the friction between coils and on the arbour. Winding up by n turns
 * draws the coil in to D' = N_b D / (N_b + n). Source: Shigley, Mechanical Engineering Design, section 10-12, from memory.
 */
import type { CoiledWire } from './compression-spring.ts'

/** Turns per M D / (d⁴ E), with friction between the coils. */
const WITH_FRICTION = 10.8

export interface TorsionCoil extends CoiledWire {
  readonly modulus_MPa: number
  readonly bodyTurns: number
  /** Both legs together, from the coil to where they are pressed, mm. */
  readonly legs_mm: number
}

/** Correction of the bending stress at the inner side of a coil of index C. */
export function innerBending(index: number): number {
  return (4 * index * index - index - 1) / (4 * index * (index - 1))
}

/** Bending stress at the inner side, MPa. */
export function torsionStress({ wire_mm, mean_mm }: CoiledWire, moment_Nmm: number): number {
  return (innerBending(mean_mm / wire_mm) * 32 * moment_Nmm) / (Math.PI * wire_mm ** 3)
}

/** Moment at which the inner side reaches a bending stress, N·mm. */
export function torsionMoment({ wire_mm, mean_mm }: CoiledWire, stress_MPa: number): number {
  return (stress_MPa * Math.PI * wire_mm ** 3) / (32 * innerBending(mean_mm / wire_mm))
}

/** Turns that give way together with the body: its own, and what its legs count for. */
export function activeTurns({ bodyTurns, legs_mm, mean_mm }: TorsionCoil): number {
  return bodyTurns + legs_mm / (3 * Math.PI * mean_mm)
}

/** Rate, N·mm per rad. */
export function torsionRate(coil: TorsionCoil): number {
  const perTurn = (coil.wire_mm ** 4 * coil.modulus_MPa) / (WITH_FRICTION * coil.mean_mm * activeTurns(coil))
  return perTurn / (2 * Math.PI)
}

/** Turns of the body alone under a moment: what draws the coil in. */
export function bodyTurnsUnder({ wire_mm, mean_mm, modulus_MPa, bodyTurns }: TorsionCoil, moment_Nmm: number): number {
  return (WITH_FRICTION * moment_Nmm * mean_mm * bodyTurns) / (wire_mm ** 4 * modulus_MPa)
}

/**
 * Radial clearance between the wound-up coil and what it sits on, mm; below zero it binds and its stress is not this one.
 *
 * @param on diameter of the arbour, mm
 */
export function arbourClearance(coil: TorsionCoil, under: { readonly moment_Nmm: number; readonly arbour_mm: number }): number {
  const drawn = (coil.bodyTurns * coil.mean_mm) / (coil.bodyTurns + bodyTurnsUnder(coil, under.moment_Nmm))
  return (drawn - coil.wire_mm - under.arbour_mm) / 2
}
