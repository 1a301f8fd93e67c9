/**
 * The outline of a part: as the design gives it, or a lug drawn around its holes and pads (the rounded hull of circles about
 * them), so that a design without outlines still shows as parts that could be cut.
 */
import type { Part, Point } from '../../engine/index.ts'

/** Metal left around a hole in a drawn lug. */
const WALL_MM = 2.1
/** Rounding of a corner that a pad makes. */
const PAD_ROUND_MM = 0.9
const POINTS_PER_CIRCLE = 40

interface Round {
  readonly at: Point
  readonly radius_mm: number
}

/** Outlines drawn once: a part never changes, and a scrub step asks for each outline several times. */
const drawnOnce = new WeakMap<Part, readonly Point[]>()

/** Closed polygon in the part's own frame, counter-clockwise; empty for a part with no holes, pads or outline. */
export function outlineOf(part: Part): readonly Point[] {
  if (part.outline.length > 2) return part.outline
  const known = drawnOnce.get(part)
  if (known !== undefined) return known
  const outline = hull(roundsOf(part).flatMap(circlePoints))
  drawnOnce.set(part, outline)
  return outline
}

function roundsOf(part: Part): readonly Round[] {
  const holes = part.holes.map((hole) => ({ at: hole.at, radius_mm: hole.diameter_mm / 2 + WALL_MM }))
  const middle = meanOf(holes.map((hole) => hole.at))
  const pads = part.pads.map((pad) => ({ at: towards(pad.at, middle, PAD_ROUND_MM), radius_mm: PAD_ROUND_MM }))
  return [...holes, ...pads]
}

function meanOf(points: readonly Point[]): Point {
  const count = Math.max(points.length, 1)
  return {
    x_mm: points.reduce((sum, point) => sum + point.x_mm, 0) / count,
    y_mm: points.reduce((sum, point) => sum + point.y_mm, 0) / count,
  }
}

function towards(from: Point, to: Point, by_mm: number): Point {
  const distance = Math.hypot(to.x_mm - from.x_mm, to.y_mm - from.y_mm)
  const share = distance > by_mm ? by_mm / distance : 0
  return { x_mm: from.x_mm + share * (to.x_mm - from.x_mm), y_mm: from.y_mm + share * (to.y_mm - from.y_mm) }
}

function circlePoints({ at, radius_mm }: Round): readonly Point[] {
  return Array.from({ length: POINTS_PER_CIRCLE }, (_, index) => {
    const angle = (2 * Math.PI * index) / POINTS_PER_CIRCLE
    return { x_mm: at.x_mm + radius_mm * Math.cos(angle), y_mm: at.y_mm + radius_mm * Math.sin(angle) }
  })
}

/** Convex hull by the monotone chain (Andrew 1979, from memory), counter-clockwise. */
function hull(points: readonly Point[]): readonly Point[] {
  if (points.length < 3) return points
  const sorted = [...points].sort((one, other) => one.x_mm - other.x_mm || one.y_mm - other.y_mm)
  const lower = chain(sorted)
  const upper = chain([...sorted].reverse())
  return [...lower.slice(0, -1), ...upper.slice(0, -1)]
}

function chain(sorted: readonly Point[]): Point[] {
  const kept: Point[] = []
  for (const point of sorted) {
    while (kept.length > 1 && turn(kept[kept.length - 2], kept[kept.length - 1], point) <= 0) kept.pop()
    kept.push(point)
  }
  return kept
}

function turn(first: Point, second: Point, third: Point): number {
  return (second.x_mm - first.x_mm) * (third.y_mm - first.y_mm) - (second.y_mm - first.y_mm) * (third.x_mm - first.x_mm)
}
