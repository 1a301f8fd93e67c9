/** Test support: a crank whose pin runs in the upright slot of a yoke, the yoke guided along x by two pins of the mount. */
import type { Design } from '../design/design.ts'
import { sketch } from './sketch.ts'

/** Crank 30 mm about the origin, drawn at `turn_rad`; the yoke's frame is the middle of its slot. */
export function scotchYoke(turn_rad: number): Design {
  return sketch({
    parts: [
      { id: 'mount', role: 'mount', holes: { main: [0, 0], near: [-60, 0], far: [-100, 0] }, drawn: [0, 0, 0] },
      { id: 'crank', holes: { main: [0, 0], tip: [30, 0] }, drawn: [0, 0, turn_rad] },
      {
        id: 'yoke',
        holes: { slot: [0, 0], near: [-60, 0], far: [-100, 0] },
        slots: { slot: [80, Math.PI / 2], near: [70, 0], far: [70, 0] },
        drawn: [30 * Math.cos(turn_rad), 0, 0],
      },
    ],
    pins: [
      { id: 'main', joins: ['mount.main', 'crank.main'] },
      { id: 'tip', joins: ['crank.tip', 'yoke.slot'], radius_mm: 2 },
      { id: 'near', joins: ['mount.near', 'yoke.near'] },
      { id: 'far', joins: ['mount.far', 'yoke.far'] },
    ],
    drive: { part: 'crank', pin: 'main', open: -3, closed: 3 },
  })
}
