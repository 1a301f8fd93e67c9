/**
 * Angle by which a toggle A-B-C is short of straight.
 *
 *      A ●────────● B        u = B − A, w = C − B
 *                  ╲ δ       δ = side · atan2(u × w, u · w)
 *                   ● C      0 straight (dead centre), negative once B has crossed the line A-C
 *
 * By atan2 and never by arccos: near dead centre an arccos loses half of the digits.
 */
import type { Toggle } from '../design/design.ts'
import { type Mechanism, pinCentre } from './mechanism.ts'

interface Bend {
  readonly cross: number
  readonly dot: number
}

function bendOf(mechanism: Mechanism, toggle: Toggle, posture: Float64Array): Bend {
  const a = pinCentre(mechanism, posture, toggle.a)
  const b = pinCentre(mechanism, posture, toggle.b)
  const c = pinCentre(mechanism, posture, toggle.c)
  const ux = b.x_mm - a.x_mm
  const uy = b.y_mm - a.y_mm
  const wx = c.x_mm - b.x_mm
  const wy = c.y_mm - b.y_mm
  return { cross: ux * wy - uy * wx, dot: ux * wx + uy * wy }
}

/** +1 or −1: on which side the toggle bends at a posture. Taken once at the nominal drawn posture and kept. */
export function toggleSide(mechanism: Mechanism, toggle: Toggle, posture: Float64Array): 1 | -1 {
  return bendOf(mechanism, toggle, posture).cross < 0 ? -1 : 1
}

/**
 * @param near the margin at a neighbouring posture, to count on past half a turn; leave out for the principal value
 * @returns rad. For a `folded` toggle the angle from the folded-back position, by the same sign rule.
 */
export function toggleMargin(
  mechanism: Mechanism,
  posture: Float64Array,
  watched: { readonly toggle: Toggle; readonly side: 1 | -1; readonly near?: number },
): number {
  const { cross, dot } = bendOf(mechanism, watched.toggle, posture)
  const angle = watched.toggle.folded ? Math.atan2(watched.side * cross, -dot) : Math.atan2(watched.side * cross, dot)
  if (watched.near === undefined) return angle
  return angle + 2 * Math.PI * Math.round((watched.near - angle) / (2 * Math.PI))
}
