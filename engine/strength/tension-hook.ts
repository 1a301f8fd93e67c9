/**
 * The hook of a tension spring: bent where its loop begins (A), twisted in the bend from the body (B).
 *
 *     σ_A = F [ K_A 16 D / (π d³) + 4 / (π d²) ]     K_A = (4C₁² − C₁ − 1) / (4C₁ (C₁ − 1))     C₁ = 2 r₁ / d
 *     τ_B = K_B 8 F D / (π d³)                       K_B = (4C₂ − 1) / (4C₂ − 4)                C₂ = 2 r₂ / d
 *
 * r₁ and r₂ are mean radii of the loop and of the bend. Source: Shigley, Mechanical Engineering Design, section 10-11, from memory.
 */
import type { CoiledWire } from '../design/springs/coil.ts'
import { innerBending } from './torsion-spring.ts'

/** A hook on its coil. */
export interface HookedCoil extends CoiledWire {
  readonly loop_mm: number
  readonly bend_mm: number
}

/** Bending stress at the inner side of the loop, MPa. */
export function hookBending({ wire_mm, mean_mm, loop_mm }: HookedCoil, force_N: number): number {
  const curved = innerBending((2 * loop_mm) / wire_mm)
  return force_N * ((curved * 16 * mean_mm) / (Math.PI * wire_mm ** 3) + 4 / (Math.PI * wire_mm ** 2))
}

/** Shear stress at the inner side of the bend, MPa. */
export function hookShear({ wire_mm, mean_mm, bend_mm }: HookedCoil, force_N: number): number {
  const index = (2 * bend_mm) / wire_mm
  return (((4 * index - 1) / (4 * index - 4)) * 8 * force_N * mean_mm) / (Math.PI * wire_mm ** 3)
}
