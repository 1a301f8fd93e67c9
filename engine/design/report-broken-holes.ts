/**
 * Holes that break through the outline of their part. Nothing is left of the lug there, and every check beside the hole would be of a section
 * that does not exist.
 */
import { limits } from '../numbers/limits.ts'
import { distanceToEdge, isInside, type Outline } from '../numbers/place-in-outline.ts'
import type { Hole, Part, Point } from './design.ts'
import type { Reading } from './reading.ts'

/** Reports each hole of a part that leaves no wall of `limits.sizeLeast_mm` to the outline; a part without an outline has none to break. */
export function reportBrokenHoles(place: string, { outline, holes }: Pick<Part, 'outline' | 'holes'>, reading: Reading): void {
  if (outline.length < 3) return
  const corners = Float64Array.from(outline.flatMap(({ x_mm, y_mm }) => [x_mm, y_mm]))
  for (const hole of holes) {
    const wall_mm = leastWall(corners, hole)
    // What could not be read is NaN and has been reported.
    if (wall_mm < limits.sizeLeast_mm) reportHole(`${place}.holes.${hole.id}`, { hole, wall_mm }, reading)
  }
}

interface BrokenHole {
  readonly hole: Hole
  readonly wall_mm: number
}

function reportHole(place: string, { hole, wall_mm }: BrokenHole, reading: Reading): void {
  const { diameter_mm, slot } = hole
  const edge_mm = wall_mm + diameter_mm / 2
  const middle = slot ? 'the middle of one end' : 'its middle'
  reading.report({
    code: 'too close',
    place,
    found: `a ${slot ? 'slot' : 'hole'} of ${shown(diameter_mm)} mm with ${middle} ${fromEdge(edge_mm)} its part’s outline: it breaks through the edge`,
    needed: `more than ${shown(diameter_mm / 2)} mm, its radius, from there to the nearest edge`,
    wayOut: `Move it inwards or the outline outwards by ${shown(limits.sizeLeast_mm - wall_mm)} mm at least, or make it smaller`,
  })
}

/** Nearer than a shop can tell apart it stands on the edge. */
function fromEdge(edge_mm: number): string {
  if (Math.abs(edge_mm) < limits.sizeLeast_mm) return 'on'
  return edge_mm > 0 ? `${shown(edge_mm)} mm inside of` : `${shown(-edge_mm)} mm outside of`
}

/** The least that stands between a hole and the boundary, mm; negative where it breaks through. */
function leastWall(corners: Outline, hole: Hole): number {
  const distances = endsOf(hole).map(({ x_mm, y_mm }) => {
    const edge_mm = distanceToEdge(corners, x_mm, y_mm)
    return isInside(corners, x_mm, y_mm) ? edge_mm : -edge_mm
  })
  return Math.min(...distances) - hole.diameter_mm / 2
}

/** Middles of the round ends of a slot; the middle of a plain hole. */
function endsOf({ at, slot }: Hole): readonly Point[] {
  if (!slot) return [at]
  const [x, y] = [Math.cos(slot.along_rad), Math.sin(slot.along_rad)].map((share) => (share * slot.length_mm) / 2)
  return [
    { x_mm: at.x_mm - x, y_mm: at.y_mm - y },
    { x_mm: at.x_mm + x, y_mm: at.y_mm + y },
  ]
}

/** Four digits tell a workshop enough of where a hole stands. */
const SHOWN_digits = 4
const shown = (value: number): string => `${Number(value.toPrecision(SHOWN_digits))}`
