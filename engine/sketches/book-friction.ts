/** Test support: three worked examples of statics textbooks as linkages, in pounds and inches where the books are. */
import type { Design } from '../design/design.ts'
import { laidOut } from './laid-out.ts'

/**
 * Eccentric and sliding crosshead: crank 8 in at 60°, rod 80 in, friction circles of shaft, sheave and crosshead pin.
 * Parts mount, crank, rod, crosshead; the crosshead runs in the mount's slots on two pins without friction.
 */
export function eccentric(): Design {
  const turn = Math.PI / 3
  const pin = [8 * Math.cos(turn), 8 * Math.sin(turn)] as const
  const head = [pin[0] + Math.sqrt(80 ** 2 - pin[1] ** 2), 0] as const
  const slot = { in: 'mount', along_rad: 0 }
  return laidOut({
    frames: { mount: [0, 0, 0], crank: [0, 0, turn], rod: [...pin, 0], crosshead: [...head, 0] },
    pins: [
      { id: 'shaft', at: [0, 0], joins: ['mount', 'crank'], radius_mm: 7, friction: 0.05 },
      { id: 'sheave', at: pin, joins: ['crank', 'rod'], radius_mm: 15, friction: 0.05 },
      { id: 'crosshead', at: head, joins: ['rod', 'crosshead'], radius_mm: 4.4, friction: 0.05 },
      { id: 'near', at: [head[0] - 10, 0], joins: ['crosshead', 'mount'], slot },
      { id: 'far', at: [head[0] + 10, 0], joins: ['crosshead', 'mount'], slot },
    ],
    drive: { part: 'crank', pin: 'shaft', open: -9, closed: 9 },
  })
}

/** Pulley on a shaft, radius 1 in; `friction` as its coefficient. Parts mount, pulley. */
export function pulley(friction: number): Design {
  return laidOut({
    frames: { mount: [0, 0, 0], pulley: [0, 0, 0] },
    pins: [{ id: 'shaft', at: [0, 0], joins: ['mount', 'pulley'], radius_mm: 1, friction }],
    drive: { part: 'pulley', pin: 'shaft', open: -1, closed: 1 },
  })
}

/**
 * Block that is guided up and down, on a wedge of `angle_rad` that is guided sideways; friction 0.35 at every face.
 * The guides are pairs of pins in slots that share the wall's and the floor's force; the lines of force meet in a point, as in the book.
 */
export function wedge(angle_rad: number, friction: number): Design {
  const slot = (part: string, along_rad: number) => ({ in: part, along_rad })
  const small = { radius_mm: 0.001, friction }
  const up = Math.PI / 2
  return laidOut({
    frames: { mount: [0, 0, 0], block: [0, 0, 0], wedge: [0, 0, 0] },
    pins: [
      { id: 'wall', at: [0, -10], joins: ['block', 'mount'], slot: slot('mount', up), ...small },
      { id: 'wallToo', at: [0, 10], joins: ['block', 'mount'], slot: slot('mount', up), ...small },
      { id: 'face', at: [0, 0], joins: ['block', 'wedge'], slot: slot('wedge', angle_rad), ...small },
      { id: 'floor', at: [-20, -10], joins: ['wedge', 'mount'], slot: slot('mount', 0), ...small },
      { id: 'floorToo', at: [20, -10], joins: ['wedge', 'mount'], slot: slot('mount', 0), ...small },
    ],
    drive: {
      kind: 'pull',
      on: { part: 2, at: { x_mm: 0, y_mm: 0 } },
      towards: { part: 0, at: { x_mm: -500, y_mm: 0 } },
      travel: { open: -9, closed: 9 },
    },
  })
}
