/**
 * A flat area with openings cut into triangles, by clipping ears: a corner whose triangle holds no other corner is cut off, until three are left.
 * Openings are first joined to the outline by a cut there and back, from their rightmost corner to a corner of the outline that it can see.
 *
 * SOURCE paper: Meisters, Polygons have ears, American Mathematical Monthly 82 (1975); the joining after Eberly, Triangulation by ear clipping;
 * both from memory.
 */
import type { Point } from '../../engine/index.ts'

export type Triangle = readonly [Point, Point, Point]

/**
 * @param loops the outline counter-clockwise, then openings clockwise
 * @returns undefined where loops run into each other, or the outline into itself
 */
export function trianglesOf(loops: readonly (readonly Point[])[]): readonly Triangle[] | undefined {
  if (loops.some((loop, index) => loops.slice(index).some((other) => loopsMeet(loop, other)))) return undefined
  const [outline, ...openings] = loops
  let whole: readonly Point[] | undefined = outline
  for (const opening of openings.toSorted((one, other) => rightmost(other) - rightmost(one))) {
    whole = whole && joined(whole, opening)
  }
  return whole && clipped(whole)
}

function loopsMeet(one: readonly Point[], other: readonly Point[]): boolean {
  return one.some((from, index) => crossesAny([from, one[(index + 1) % one.length]], other))
}

const rightmost = (loop: readonly Point[]): number => Math.max(...loop.map(({ x_mm }) => x_mm))

/** Twice the area of a triangle, positive counter-clockwise. */
function turn(a: Point, b: Point, c: Point): number {
  return (b.x_mm - a.x_mm) * (c.y_mm - a.y_mm) - (c.x_mm - a.x_mm) * (b.y_mm - a.y_mm)
}

function joined(outline: readonly Point[], opening: readonly Point[]): readonly Point[] | undefined {
  const start = opening.findIndex(({ x_mm }) => x_mm === rightmost(opening))
  const from = opening[start]
  const seen = outline
    .map((corner, index) => ({ index, far: Math.hypot(corner.x_mm - from.x_mm, corner.y_mm - from.y_mm) }))
    .toSorted((one, other) => one.far - other.far)
    .find(({ index }) => sees(from, { outline, index }) && !crossesAny([from, outline[index]], opening))
  if (seen === undefined) return undefined
  const ring = [...opening.slice(start), ...opening.slice(0, start), from]
  return [...outline.slice(0, seen.index + 1), ...ring, ...outline.slice(seen.index)]
}

/** Whether the way from a place to a corner runs inside of the outline, at the corner and before it. */
function sees(from: Point, { outline, index }: { readonly outline: readonly Point[]; readonly index: number }): boolean {
  const count = outline.length
  const [before, corner, after] = [outline[(index + count - 1) % count], outline[index], outline[(index + 1) % count]]
  const isConvex = turn(before, corner, after) > 0
  const [left, right] = [turn(before, corner, from) > 0, turn(corner, after, from) > 0]
  if (isConvex ? !(left && right) : !(left || right)) return false
  return !crossesAny([from, corner], outline)
}

function crossesAny([from, to]: readonly [Point, Point], loop: readonly Point[]): boolean {
  return loop.some((a, index) => {
    const b = loop[(index + 1) % loop.length]
    if ([from, to].some((end) => isSame(end, a) || isSame(end, b))) return false
    const [ofEnds, ofSides] = [turn(from, to, a) * turn(from, to, b), turn(a, b, from) * turn(a, b, to)]
    // Both are zero for sides in one line, which a straight edge with a notch in it has and which cross nothing.
    return ofEnds <= 0 && ofSides <= 0 && (ofEnds < 0 || ofSides < 0)
  })
}

const isSame = (one: Point, other: Point): boolean => one.x_mm === other.x_mm && one.y_mm === other.y_mm

function clipped(loop: readonly Point[]): readonly Triangle[] | undefined {
  const left = [...loop]
  const triangles: Triangle[] = []
  while (left.length > 3) {
    const ear = left.findIndex((_, index) => isEar(left, index))
    // Every contour that does not cross itself has an ear.
    if (ear < 0) return undefined
    const triangle = around(left, ear)
    if (turn(...triangle) > 0) triangles.push(triangle)
    left.splice(ear, 1)
  }
  return [...triangles, [left[0], left[1], left[2]]]
}

function around(loop: readonly Point[], index: number): Triangle {
  const count = loop.length
  return [loop[(index + count - 1) % count], loop[index], loop[(index + 1) % count]]
}

function isEar(loop: readonly Point[], index: number): boolean {
  const triangle = around(loop, index)
  const [a, b, c] = triangle
  if (turn(a, b, c) <= 0) return false
  return !loop.some((point) => !triangle.some((corner) => isSame(corner, point)) && isInside(point, triangle))
}

function isInside(point: Point, [a, b, c]: Triangle): boolean {
  return turn(a, b, point) >= 0 && turn(b, c, point) >= 0 && turn(c, a, point) >= 0
}
