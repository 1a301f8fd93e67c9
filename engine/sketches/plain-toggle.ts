/** Test support: a toggle A-B-C that pushes a rocker, with four different pins. */
import type { Design } from '../design/design.ts'
import { type Sketch, sketch } from './sketch.ts'

/**
 *                 B              A (0, 0) on the mount, AB 40, BC 25, C on a rocker of 50 about G (65, 50).
 *      A ●──────●──── ● C        B on the +y side; drawn with C about 12° of margin from dead centre.
 *                     │          Pins: A 2.0, B 2.5, C 1.5, G 3.0 mm radius.
 *                   ● G
 */
export function plainToggle(more: Partial<Sketch> = {}): Design {
  const c = { x: 64.66, y: 50 - Math.sqrt(50 ** 2 - 0.34 ** 2) }
  const span = Math.hypot(c.x, c.y)
  // Law of cosines in the triangle A-B-C.
  const atA = Math.acos((40 ** 2 + span ** 2 - 25 ** 2) / (2 * 40 * span)) + Math.atan2(c.y, c.x)
  const b = { x: 40 * Math.cos(atA), y: 40 * Math.sin(atA) }
  return sketch({
    parts: [
      { id: 'mount', role: 'mount', holes: { a: [0, 0], g: [65, 50] }, drawn: [0, 0, 0] },
      { id: 'ab', role: 'link', holes: { a: [0, 0], b: [40, 0] }, drawn: [0, 0, atA] },
      { id: 'bc', role: 'link', holes: { b: [0, 0], c: [25, 0] }, drawn: [b.x, b.y, Math.atan2(c.y - b.y, c.x - b.x)] },
      { id: 'rocker', holes: { g: [0, 0], c: [50, 0] }, drawn: [65, 50, Math.atan2(c.y - 50, c.x - 65)] },
    ],
    pins: [
      { id: 'a', joins: ['mount.a', 'ab.a'], radius_mm: 2 },
      { id: 'b', joins: ['ab.b', 'bc.b'], radius_mm: 2.5 },
      { id: 'c', joins: ['bc.c', 'rocker.c'], radius_mm: 1.5 },
      { id: 'g', joins: ['mount.g', 'rocker.g'], radius_mm: 3 },
    ],
    drive: { part: 'ab', pin: 'a', open: -40 * (Math.PI / 180), closed: 40 * (Math.PI / 180) },
    toggles: [{ id: 'plain', pins: ['a', 'b', 'c'] }],
    ...more,
  })
}
