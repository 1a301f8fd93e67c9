/** Where a hole can go through two parts as they are drawn: the place that is farthest from the edges of both. */
import type { Point } from '../../design/design.ts'
import { placed } from '../../motion/mechanism.ts'
import { boxOf } from '../../motion/outline-overlap.ts'
import { distanceToEdge, isInside, type Outline } from '../../numbers/place-in-outline.ts'
import type { Ground } from './ground.ts'

/** A place with the least distance to an edge of either part, mm. */
export interface PlaceInBoth {
  readonly at: Point
  readonly edge_mm: number
}

/** Places tried along each side of what the parts' boxes have in common; a proposal needs a good place and not the best. */
const TRIED = 24

/** The best place tried; undefined where a part has no outline or where they do not lie over each other. */
export function metalOfBoth(ground: Ground, parts: readonly [number, number]): PlaceInBoth | undefined {
  const [one, other] = parts.map((part) => outlineOf(ground, part))
  if (one.length === 0 || other.length === 0) return undefined
  const [a, b] = [boxOf(one), boxOf(other)]
  const [left, bottom] = [Math.max(a.left, b.left), Math.max(a.bottom, b.bottom)]
  const [width, height] = [Math.min(a.right, b.right) - left, Math.min(a.top, b.top) - bottom]
  if (width <= 0 || height <= 0) return undefined
  let best: PlaceInBoth | undefined
  for (let place = 0; place < TRIED * TRIED; place++) {
    const x_mm = left + (((place % TRIED) + 0.5) / TRIED) * width
    const y_mm = bottom + ((Math.floor(place / TRIED) + 0.5) / TRIED) * height
    if (!isInside(one, x_mm, y_mm) || !isInside(other, x_mm, y_mm)) continue
    const edge_mm = Math.min(distanceToEdge(one, x_mm, y_mm), distanceToEdge(other, x_mm, y_mm))
    if (!best || edge_mm > best.edge_mm) best = { at: { x_mm, y_mm }, edge_mm }
  }
  return best
}

/** Of a part in the mount frame, as drawn. */
function outlineOf({ design, posture }: Ground, part: number): Outline {
  const corners = design.parts[part].outline.map((corner) => placed(posture, part, corner))
  return Float64Array.from(corners.flatMap(({ x_mm, y_mm }) => [x_mm, y_mm]))
}
