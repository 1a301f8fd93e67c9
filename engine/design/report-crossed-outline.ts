/**
 * An outline whose sides cross has no inside: area, mass, walls and solids of it would be of a shape that cannot be cut.
 *
 *     sides a-b and c-d cross where c and d lie on either side of the line a-b, and a and b on either side of the line c-d
 */
import type { Point } from './design.ts'
import type { Reading } from './reading.ts'

/** Reports the first two sides that cross; sides that only touch are left alone. @param place of the outline */
export function reportCrossedOutline(place: string, outline: readonly Point[], reading: Reading): void {
  const crossed = firstCrossing(outline)
  if (crossed === undefined) return
  const [one, other] = crossed.map((corner) => `${corner + 1} to ${((corner + 1) % outline.length) + 1}`)
  reading.report({
    code: 'wrong order',
    place: `${place}.${crossed[1]}`,
    found: `an outline that crosses itself: its side from corner ${one} by that from corner ${other}`,
    needed: 'corners in their order around the part; the last is joined to the first',
    wayOut: 'Put the corners in order, or move the one that stands astray.',
  })
}

/** Numbers of the corners from which two sides run that cross. Sides that are neighbours share a corner and cannot cross. */
function firstCrossing(outline: readonly Point[]): readonly [number, number] | undefined {
  const count = outline.length
  const at = (corner: number): Point => outline[corner % count]
  for (let one = 0; one < count; one++) {
    const last = one === 0 ? count - 1 : count
    for (let other = one + 2; other < last; other++) {
      if (cross(at(one), at(one + 1), at(other), at(other + 1))) return [one, other]
    }
  }
  return undefined
}

function cross(a: Point, b: Point, c: Point, d: Point): boolean {
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0
}

/** Twice the area of the triangle, positive where the third corner lies to the left of the way from the first to the second. */
function side(from: Point, to: Point, at: Point): number {
  return (to.x_mm - from.x_mm) * (at.y_mm - from.y_mm) - (to.y_mm - from.y_mm) * (at.x_mm - from.x_mm)
}
