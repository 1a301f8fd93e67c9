/** How far a part's material reaches from a point: what edge distances and sections are measured by. */
import type { Point } from '../design/design.ts'
import type { Vector } from '../numbers/vector.ts'

/**
 * Distance from a point inside of an outline to where a ray first leaves it, mm.
 *
 * @param outline closed polygon, part frame
 * @param direction unit vector, part frame
 * @returns 0 where the ray meets no side: the point lies outside
 */
export function outlineReach(outline: readonly Point[], from: Point, direction: Vector): number {
  let nearest = Number.POSITIVE_INFINITY
  for (let index = 0; index < outline.length; index++) {
    const start = outline[index]
    const end = outline[index + 1 === outline.length ? 0 : index + 1]
    const side_x = end.x_mm - start.x_mm
    const side_y = end.y_mm - start.y_mm
    const away_x = start.x_mm - from.x_mm
    const away_y = start.y_mm - from.y_mm
    const across = direction.x * side_y - direction.y * side_x
    if (across === 0) continue
    const share = (away_x * direction.y - away_y * direction.x) / across
    if (share < 0 || share > 1) continue
    const reach = (away_x * side_y - away_y * side_x) / across
    if (reach > 0 && reach < nearest) nearest = reach
  }
  return Number.isFinite(nearest) ? nearest : 0
}
