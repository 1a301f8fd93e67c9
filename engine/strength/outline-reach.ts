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
  for (const [index, start] of outline.entries()) {
    const end = outline[(index + 1) % outline.length]
    const side = { x: end.x_mm - start.x_mm, y: end.y_mm - start.y_mm }
    const away = { x: start.x_mm - from.x_mm, y: start.y_mm - from.y_mm }
    const across = direction.x * side.y - direction.y * side.x
    if (across === 0) continue
    const reach = (away.x * side.y - away.y * side.x) / across
    const share = (away.x * direction.y - away.y * direction.x) / across
    if (reach > 0 && share >= 0 && share <= 1 && reach < nearest) nearest = reach
  }
  return Number.isFinite(nearest) ? nearest : 0
}
