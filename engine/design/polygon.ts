import type { Point } from './design.ts'

/** Area and centre of area of a polygon that does not cross itself, whichever way around its corners run; area 0 has no centre (NaN). */
export function polygon(corners: readonly Point[]): { readonly area_mm2: number; readonly centre: Point } {
  let twice_mm2 = 0
  let x = 0
  let y = 0
  for (const [index, corner] of corners.entries()) {
    const next = corners[(index + 1) % corners.length]
    const cross = corner.x_mm * next.y_mm - next.x_mm * corner.y_mm
    twice_mm2 += cross
    x += (corner.x_mm + next.x_mm) * cross
    y += (corner.y_mm + next.y_mm) * cross
  }
  return { area_mm2: Math.abs(twice_mm2) / 2, centre: { x_mm: x / (3 * twice_mm2), y_mm: y / (3 * twice_mm2) } }
}
