/** Where a point stands to an outline: a closed polygon, convex or not, in either order, corners x, y, x, y … in one frame, mm. */
export type Outline = Float64Array

/** Even-odd rule: a ray to the right crosses the boundary an odd number of times. */
export function isInside(outline: Outline, x: number, y: number): boolean {
  let inside = false
  const count = outline.length
  for (let at = 0, before = count - 2; at < count; before = at, at += 2) {
    const y0 = outline[before + 1]
    const y1 = outline[at + 1]
    if (y0 > y === y1 > y) continue
    if (x < outline[before] + ((y - y0) * (outline[at] - outline[before])) / (y1 - y0)) inside = !inside
  }
  return inside
}

/** From a point to the nearest place of the boundary, mm. */
export function distanceToEdge(outline: Outline, x: number, y: number): number {
  let least = Number.POSITIVE_INFINITY
  const count = outline.length
  for (let at = 0, before = count - 2; at < count; before = at, at += 2) {
    const ex = outline[at] - outline[before]
    const ey = outline[at + 1] - outline[before + 1]
    const px = x - outline[before]
    const py = y - outline[before + 1]
    const length2 = ex * ex + ey * ey
    const share = length2 > 0 ? Math.min(1, Math.max(0, (px * ex + py * ey) / length2)) : 0
    const dx = px - share * ex
    const dy = py - share * ey
    least = Math.min(least, dx * dx + dy * dy)
  }
  return Math.sqrt(least)
}
