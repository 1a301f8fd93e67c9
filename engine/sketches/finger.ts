/** Test support: the example finger's geometry in inside units, with one friction for all pins. */
import type { Design } from '../design/design.ts'
import { type Sketch, type SketchPart, sketch } from './sketch.ts'

/** rad. */
export const DEG = Math.PI / 180

export interface FingerOptions {
  readonly friction?: number
  readonly radius_mm?: number
  readonly clearance_mm?: number
  readonly more?: Partial<Sketch>
}

/** Pin, the hole it is fixed in, the hole that turns on it. */
const JOINS: readonly (readonly [string, string, string])[] = [
  ['mcp', 'mount.mcp', 'proximal.mcp'],
  ['pip', 'proximal.pip', 'middle.pip'],
  ['dip', 'middle.dip', 'distal.dip'],
  ['baseA', 'mount.baseA', 'link1.near'],
  ['baseB', 'link1.far', 'middle.baseB'],
  ['topA', 'proximal.topA', 'link2.near'],
  ['topB', 'link2.far', 'distal.topB'],
]

/**
 * Mount frame at the MCP pin; phalanx frames at their proximal pins. Toggle: A = `topA`, B = `topB`, C = `dip`.
 * Drawn with PIP and DIP at 4° when MCP is 0°; the links are as long as that posture needs (42.108 and 24.507 mm rounded).
 */
export function finger(options: FingerOptions = {}): Design {
  return sketch({
    parts: fingerParts(),
    pins: JOINS.map(([id, fixed, other]) => ({
      id,
      joins: [fixed, other],
      radius_mm: options.radius_mm ?? 1.5,
      friction: options.friction ?? 0,
      clearance_mm: options.clearance_mm ?? 0,
    })),
    drive: { part: 'proximal', pin: 'mcp', open: 0, closed: 75 * DEG },
    toggles: [{ id: 'distal', pins: ['topA', 'topB', 'dip'] }],
    ...options.more,
  })
}

function fingerParts(): SketchPart[] {
  const middle = [44, 0, -4 * DEG] as const
  const distal = [44 + 26 * Math.cos(4 * DEG), -26 * Math.sin(4 * DEG), -8 * DEG] as const
  const length1 = spanOf([6.47, 3.43], carried(middle, [4, -5.2]))
  const length2 = spanOf([45.13, 4.33], carried(distal, [-2.27, -5.41]))
  return [
    { id: 'mount', role: 'mount', holes: { mcp: [0, 0], baseA: [6.47, 3.43] }, drawn: [0, 0, 0] },
    {
      id: 'proximal',
      role: 'proximal',
      holes: { mcp: [0, 0], pip: [44, 0], topA: [45.13, 4.33] },
      drawn: [0, 0, 0],
      pads: { pad: [22, -6] },
    },
    {
      id: 'middle',
      role: 'middle',
      holes: { pip: [0, 0], dip: [26, 0], baseB: [4, -5.2] },
      drawn: middle,
      pads: { pad: [13, -6] },
    },
    {
      id: 'distal',
      role: 'distal',
      holes: { dip: [0, 0], topB: [-2.27, -5.41] },
      drawn: distal,
      pads: { tip: [22, 0], back: [12, 4] },
    },
    { id: 'link1', role: 'link', holes: { near: [0, 0], far: [length1, 0] } },
    { id: 'link2', role: 'link', holes: { near: [0, 0], far: [length2, 0] } },
  ]
}

type Pair = readonly [number, number]

function carried([x, y, turn]: readonly [number, number, number], [px, py]: Pair): Pair {
  return [x + Math.cos(turn) * px - Math.sin(turn) * py, y + Math.sin(turn) * px + Math.cos(turn) * py]
}

function spanOf(from: Pair, to: Pair): number {
  return Math.hypot(to[0] - from[0], to[1] - from[1])
}
