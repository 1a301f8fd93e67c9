/** Test support: the example finger with the stop that ends its travel, the link's longer pin against a shelf of the middle phalanx. */
import type { Design, LoadCase } from '../design/design.ts'
import { type FingerOptions, finger } from './finger.ts'
import { oneFriction } from './sketch.ts'

/** Part indices of the example finger. */
export const PROXIMAL = 1
/** See `PROXIMAL`. */
export const MIDDLE = 2
/** See `PROXIMAL`. */
export const DISTAL = 3

const LINK_2 = 5
const DEG = Math.PI / 180

/** Closes at 75° with the toggle 8.7° short of dead centre. */
export function shelfFinger(options: FingerOptions = {}): Design {
  const plain = finger(options)
  const edges = [{ id: 'shelf', kind: 'straight', from: { x_mm: 21.63, y_mm: 1.15 }, to: { x_mm: 18.44, y_mm: 0.89 } } as const]
  const parts = plain.parts.map((part, index) => (index === MIDDLE ? { ...part, edges } : part))
  const at = parts[LINK_2].holes[1].at
  const stop = {
    id: 'shelf',
    round: { part: LINK_2, at, radius_mm: 1.5 },
    against: { part: MIDDLE, edge: 0 },
    friction: oneFriction(options.friction ?? 0),
    gap_mm: 0,
  }
  const travel = { open: 0, closed: 85 * DEG }
  return { ...plain, parts, stops: [stop], drive: { kind: 'turn', part: PROXIMAL, against: 0, pin: 0, travel } }
}

/** A torsion spring at the MCP that opens. */
export function returnSpring(preload_Nmm: number, ownFriction_ratio = 0): Design['springs'][number] {
  return { id: 'return', kind: 'torsion', pin: 0, on: PROXIMAL, against: 0, rate_Nmm_rad: 0, preload_Nmm, ownFriction_ratio }
}

/** A force on a pad of a phalanx, across the phalanx: positive towards its back. */
export function padCase(id: string, on: { part: number; pad: number; force_N: number }, keeper?: LoadCase['keeper']): LoadCase {
  const { part, pad, force_N } = on
  const direction_rad = Math.sign(force_N) * 90 * DEG
  const forces = [{ part, pad, direction_rad, frame: part, force_N: Math.abs(force_N) }]
  return { id, name: id, forces, couples: [], acts: 'closed', sideways: [], ...(keeper && { keeper }) }
}
