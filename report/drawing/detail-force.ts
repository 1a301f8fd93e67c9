/** The line of force in the detail of a toggle, and the words under it that say what the eye should see. */
import type { Design, ForcePicture, Posture, UnitSystem } from '../../engine/index.ts'
import { say } from '../tables/value-text.ts'
import { arrow } from './arrows.ts'
import { type ForceLine, forceLine, seenToggle } from './force-line.ts'
import { boxesAlong } from './labels.ts'
import { line, type Place } from './svg.ts'
import { onSheet, type View } from './view.ts'

const LABEL_PX = 12.5

/** A toggle in its detail's circle. */
export interface ForceDetail {
  readonly design: Design
  readonly posture: Posture
  readonly forces?: ForcePicture
  readonly toggle: number
  readonly units: UnitSystem
  readonly centre: Place
  readonly radius: number
}

/** The line of the link's force across the whole circle; with a head that shows which way the link pushes where there is a force. */
export function drawForceLine(detail: ForceDetail, view: View) {
  const found = detail.forces === undefined ? undefined : forceLine({ ...detail, forces: detail.forces })
  if (found === undefined) return undefined
  const { entry, exit } = crossing(detail, { view, line: found })
  const atB = onSheet(view, detail.posture.pinsAt[seenToggle(detail.design, detail.toggle).bend])
  const isEntryNear = Math.hypot(entry.x - atB.x, entry.y - atB.y) < Math.hypot(exit.x - atB.x, exit.y - atB.y)
  const [near, far] = isEntryNear ? [entry, exit] : [exit, entry]
  const between = (share: number): Place => ({ x: near.x + share * (far.x - near.x), y: near.y + share * (far.y - near.y) })
  const { tension_N } = found
  const words = tension_N === undefined ? 'nearest line' : say(Math.abs(tension_N), 'N', detail.units)
  const [outer, inner] = [between(0.06), between(0.36)]
  const pushed =
    tension_N === undefined ? [] : tension_N > 0 ? arrow(inner, outer, 'force link') : arrow(outer, inner, 'force link')
  const side = Math.atan2(far.x - near.x, near.y - far.y)
  const label = { words, anchor: between(0.12), clear_px: 8, prefers_rad: side, className: 'value link', size_px: LABEL_PX }
  return { shapes: [line(entry, exit, 'action'), ...pushed], labels: [label], obstacles: boxesAlong(entry, exit, 3) }
}

/** Where a line enters and leaves the detail's circle. */
function crossing(detail: ForceDetail, { view, line: { through, direction_rad } }: { view: View; line: ForceLine }) {
  const start = onSheet(view, through)
  const along = { x: Math.cos(direction_rad), y: -Math.sin(direction_rad) }
  const mid = (detail.centre.x - start.x) * along.x + (detail.centre.y - start.y) * along.y
  const at = (reach: number): Place => ({ x: start.x + (mid + reach) * along.x, y: start.y + (mid + reach) * along.y })
  return { entry: at(-detail.radius), exit: at(detail.radius) }
}

/** What the eye should see, in words: the distance of the force's line from pin C against its friction circle. */
export function captionOf(detail: ForceDetail): readonly string[] {
  const found = detail.forces === undefined ? undefined : forceLine({ ...detail, forces: detail.forces })
  if (found === undefined) return []
  const { distance_mm, frictionCircle_mm, tension_N } = found
  const name = detail.design.pins[seenToggle(detail.design, detail.toggle).arm].id
  const misses = distance_mm > frictionCircle_mm
  const passes = `pin ${name} at ${say(distance_mm, 'mm', detail.units)}, ${misses ? 'outside' : 'through'} its friction circle`
  const size = `of ${say(frictionCircle_mm, 'mm', detail.units)}`
  if (tension_N !== undefined) return ['The link’s force passes', passes, `${size}.`]
  // Past dead centre the arm is held by its stop, whatever friction does.
  const isPast = detail.posture.margins_rad[detail.toggle] < 0
  const rests = isPast ? '' : `: it ${misses ? 'cannot' : 'can'} rest here`
  return ['The nearest line that friction allows passes', passes, `${size}${rests}.`]
}
