/** Test support: a toggle A-B-C of any sizes that pushes a rocker, opened by a spring on the rocker or by nothing. */
import type { Design } from '../design/design.ts'
import { type Sketch, sketch } from './sketch.ts'

export interface ToggleSizes {
  /** A to B, mm. */
  readonly first_mm: number
  /** B to C, mm. */
  readonly arm_mm: number
  readonly radii_mm: { readonly a: number; readonly b: number; readonly c: number; readonly g: number }
  readonly friction: number
  /** Margin as drawn, rad. */
  readonly margin_rad: number
  /** Length of the rocker, and how far its pivot leans out beyond C, mm. */
  readonly rocker_mm: number
  readonly lean_mm: number
  /** Couple that opens, on the rocker, N·mm; 0 for no spring. */
  readonly spring_Nmm: number
}

/**
 *                 B              A (0, 0) on the mount, C on the x axis as drawn, B on the +y side.
 *      A ●──────●──── ● C        The rocker's pivot G stands above C and leans out by `lean_mm`.
 *                     │          Parts: mount, ab, bc, rocker. The spring turns the rocker clockwise: C towards A.
 *                   ● G
 */
export function toggleOf(sizes: ToggleSizes, more: Partial<Sketch> = {}): Design {
  const { first_mm: first, arm_mm: arm, radii_mm, friction, margin_rad } = sizes
  const span = Math.sqrt(first ** 2 + arm ** 2 + 2 * first * arm * Math.cos(margin_rad))
  const atA = Math.asin((arm * Math.sin(margin_rad)) / span)
  const g = [span + sizes.lean_mm, Math.sqrt(sizes.rocker_mm ** 2 - sizes.lean_mm ** 2)] as const
  const spring = {
    id: 'return',
    kind: 'torsion',
    pin: 3,
    on: 0,
    against: 3,
    rate_Nmm_rad: 0,
    preload_Nmm: sizes.spring_Nmm,
    ownFriction_ratio: 0,
  } as const
  return sketch({
    parts: [
      { id: 'mount', role: 'mount', holes: { a: [0, 0], g }, drawn: [0, 0, 0] },
      { id: 'ab', role: 'link', holes: { a: [0, 0], b: [first, 0] }, drawn: [0, 0, atA] },
      {
        id: 'bc',
        role: 'link',
        holes: { b: [0, 0], c: [arm, 0] },
        drawn: [first * Math.cos(atA), first * Math.sin(atA), atA - margin_rad],
      },
      { id: 'rocker', holes: { g: [0, 0], c: [sizes.rocker_mm, 0] }, drawn: [...g, Math.atan2(-g[1], span - g[0])] },
    ],
    pins: [
      { id: 'a', joins: ['mount.a', 'ab.a'], radius_mm: radii_mm.a, friction },
      { id: 'b', joins: ['ab.b', 'bc.b'], radius_mm: radii_mm.b, friction },
      { id: 'c', joins: ['bc.c', 'rocker.c'], radius_mm: radii_mm.c, friction },
      { id: 'g', joins: ['mount.g', 'rocker.g'], radius_mm: radii_mm.g, friction },
    ],
    drive: { part: 'ab', pin: 'a', open: -1, closed: 1 },
    toggles: [{ id: 'plain', pins: ['a', 'b', 'c'] }],
    ...(sizes.spring_Nmm !== 0 && { springs: [spring] }),
    ...more,
  })
}
