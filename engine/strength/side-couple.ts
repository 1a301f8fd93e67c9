/**
 * A hinge that holds a couple out of the plane: its pin between the slices of two parts.
 *
 *        outer   ▓▓▓▓           ▓▓▓▓        each part presses on the pin with a pressure that grows linearly from its own middle,
 *        ─────────────────────────────      q = C (z − z₀) / Σ∫(z − z₀)² dz, as a stiff pin in a stiff bore does: no force, the couple C;
 *        inner         ▓▓▓▓▓                the two parts give opposite couples
 *
 * Both couples lie in one plane through the pin: the forces point along the line from the hinge to the push.
 */
import type { Part } from '../design/design.ts'
import { beamUnder, type PinBeam, type Stretch } from './pin-beam.ts'

/** What one newton millimetre of couple does. */
export interface SideCouple {
  /** Shear, N, and bending moment, N·mm, in the pin. */
  readonly beam: PinBeam
  /** Largest pressure along the pin in the outer and in the inner part, N/mm. */
  readonly outer_N_mm: number
  readonly inner_N_mm: number
}

/** Hinge under one newton millimetre; undefined where one of the parts does not say where it lies across the finger. */
export function sideCouple(outer: Part, inner: Part): SideCouple | undefined {
  const away = pressed(outer, 1)
  const back = pressed(inner, -1)
  if (!away || !back) return undefined
  return { beam: beamUnder([...away, ...back], []), outer_N_mm: largest(away), inner_N_mm: largest(back) }
}

/** Pressures of a part that give a couple and no force. */
function pressed({ across = [] }: Part, couple_Nmm: number): readonly Stretch[] | undefined {
  if (across.length === 0) return undefined
  const width = across.reduce((sum, { from_mm, to_mm }) => sum + to_mm - from_mm, 0)
  const centre = across.reduce((sum, { from_mm, to_mm }) => sum + (to_mm ** 2 - from_mm ** 2) / 2, 0) / width
  const stiffness = across.reduce((sum, { from_mm, to_mm }) => sum + ((to_mm - centre) ** 3 - (from_mm - centre) ** 3) / 3, 0)
  const slope = couple_Nmm / stiffness
  return across.map(({ from_mm, to_mm }) => ({ from_mm, to_mm, at: slope * (from_mm - centre), slope }))
}

function largest(stretches: readonly Stretch[]): number {
  return Math.max(...stretches.flatMap(({ from_mm, to_mm, at, slope }) => [at, at + slope * (to_mm - from_mm)]).map(Math.abs))
}
