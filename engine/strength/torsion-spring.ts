/**
 * The coil of a torsion spring of round wire, its legs pressed at their ends.
 *
 *     σ = K_i 32 M / (π d³)             K_i = (4C² − C − 1) / (4C (C − 1))     the inner side, where winding up presses
 *
 * Winding up by n turns draws the coil in to D' = N_b D / (N_b + n), for which what it sits on must leave room.
 * Source: Shigley, Mechanical Engineering Design, section 10-12, from memory; the correction is A. M. Wahl's.
 */
import { bodyTurnsUnder, type CoiledWire, type TorsionCoil } from '../design/springs/coil.ts'

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

/**
 * Radial clearance between the wound-up coil and what it sits on, mm; below zero it binds and its stress is not this one.
 *
 * @param on diameter of the arbour, mm
 */
export function arbourClearance(coil: TorsionCoil, under: { readonly moment_Nmm: number; readonly arbour_mm: number }): number {
  const drawn = (coil.bodyTurns * coil.mean_mm) / (coil.bodyTurns + bodyTurnsUnder(coil, under.moment_Nmm))
  return (drawn - coil.wire_mm - under.arbour_mm) / 2
}

/** Turns by which the body can be wound up until it touches what it sits on. */
export function turnsToArbour({ bodyTurns, mean_mm, wire_mm }: TorsionCoil, arbour_mm: number): number {
  return (bodyTurns * mean_mm) / (arbour_mm + wire_mm) - bodyTurns
}
