/**
 * Two views of a flat part: its face, and beside it the part seen along x. What the slices of a fork are joined by is not in the design and
 * not in the drawing.
 *
 * Third-angle: the view on the right is what is seen from the right; first-angle: what is seen from the left (ISO 128-30, from memory).
 */
import type { Edge, Hole, Part, Point } from '../../engine/index.ts'
import { type At, type Ink, type LineType, stroke } from './ink.ts'

export type Projection = 'first-angle' | 'third-angle'

/** Where a part's own frame stands on the paper. */
export interface Placing {
  readonly origin: At
  readonly ratio: number
}

/** A place of the part on the paper. */
export function onPaper({ origin, ratio }: Placing, { x_mm, y_mm }: Point): At {
  return { x: origin.x + ratio * x_mm, y: origin.y - ratio * y_mm }
}

const CROSS_OVER = 1.5
const ARC_STEPS = 24

/** Outline, holes with their centre lines, and the edges that stops run against. */
export function faceView({ outline, holes, edges }: Part, placing: Placing): readonly Ink[] {
  const corners = outline.map((corner) => onPaper(placing, corner))
  return [
    ...corners.map((corner, index) => stroke(corner, corners[(index + 1) % corners.length], 'wide')),
    ...edges.flatMap((edge) => edgeLines(edge, placing, { around: 0, type: 'wide' })),
    ...holes.flatMap((hole) => holeLines(hole, placing)),
  ]
}

function holeLines(hole: Hole, placing: Placing): readonly Ink[] {
  const middle = onPaper(placing, hole.at)
  const reach = (placing.ratio * hole.diameter_mm) / 2 + CROSS_OVER
  const cross = [
    stroke({ x: middle.x - reach, y: middle.y }, { x: middle.x + reach, y: middle.y }, 'centre'),
    stroke({ x: middle.x, y: middle.y - reach }, { x: middle.x, y: middle.y + reach }, 'centre'),
  ]
  return [...rimLines(hole, placing, { around: 0, type: 'wide' }), ...cross]
}

/** The rim of a hole or slot, or a line around it. @param line how far outside of the rim on the paper, and of which type */
export function rimLines(
  { at, diameter_mm, slot }: Hole,
  placing: Placing,
  { around, type }: { readonly around: number; readonly type: LineType },
): readonly Ink[] {
  const middle = onPaper(placing, at)
  const radius = (placing.ratio * diameter_mm) / 2 + around
  if (slot === undefined) return [{ kind: 'circle', at: middle, radius, type }]
  const half = (placing.ratio * slot.length_mm) / 2
  const ends = [0, 1].flatMap((end) => {
    const turn = slot.along_rad + Math.PI * end
    const centre = { x: middle.x + half * Math.cos(turn), y: middle.y - half * Math.sin(turn) }
    return arcPlaces(centre, radius, [turn - Math.PI / 2, turn + Math.PI / 2])
  })
  return ends.map((place, index) => stroke(place, ends[(index + 1) % ends.length], type))
}

/** An edge that a stop runs against, or a line beside it. @param line how far off the metal on the paper, and of which type */
export function edgeLines(
  edge: Edge,
  placing: Placing,
  { around, type }: { readonly around: number; readonly type: LineType },
): readonly Ink[] {
  if (edge.kind === 'straight') {
    const [from, to] = besideLine([onPaper(placing, edge.from), onPaper(placing, edge.to)], around)
    return [stroke(from, to, type)]
  }
  const to_rad = edge.to_rad > edge.from_rad ? edge.to_rad : edge.to_rad + 2 * Math.PI
  const radius = placing.ratio * edge.radius_mm + (edge.solid === 'inside' ? around : -around)
  const places = arcPlaces(onPaper(placing, edge.centre), Math.max(0, radius), [edge.from_rad, to_rad])
  return places.slice(1).map((to, index) => stroke(places[index], to, type))
}

/** A line to the left of another, seen along it. */
export function besideLine([from, to]: readonly [At, At], by: number): readonly [At, At] {
  const length = Math.hypot(to.x - from.x, to.y - from.y)
  const [dx, dy] = [(by * (to.y - from.y)) / length, (-by * (to.x - from.x)) / length]
  return [
    { x: from.x + dx, y: from.y + dy },
    { x: to.x + dx, y: to.y + dy },
  ]
}

/** Places along an arc, counter-clockwise as the part sees it. */
function arcPlaces(centre: At, radius: number, [from, to]: readonly [number, number]): readonly At[] {
  return Array.from({ length: ARC_STEPS + 1 }, (_, step) => {
    const angle = from + ((to - from) * step) / ARC_STEPS
    return { x: centre.x + radius * Math.cos(angle), y: centre.y - radius * Math.sin(angle) }
  })
}

/** A middle of an edge, where its tolerance points to. */
export function middleOfEdge(edge: Edge): Point {
  if (edge.kind === 'straight') {
    return { x_mm: (edge.from.x_mm + edge.to.x_mm) / 2, y_mm: (edge.from.y_mm + edge.to.y_mm) / 2 }
  }
  const to_rad = edge.to_rad > edge.from_rad ? edge.to_rad : edge.to_rad + 2 * Math.PI
  const angle = (edge.from_rad + to_rad) / 2
  return {
    x_mm: edge.centre.x_mm + edge.radius_mm * Math.cos(angle),
    y_mm: edge.centre.y_mm + edge.radius_mm * Math.sin(angle),
  }
}

/** The slices in which a part lies, from the lowest; one from 0 where only its thickness is stated, none without either. */
export function slicesOf({ across = [], thickness_mm }: Part): readonly { readonly from_mm: number; readonly to_mm: number }[] {
  if (across.length > 0) return across.toSorted((one, other) => one.from_mm - other.from_mm)
  return thickness_mm === undefined ? [] : [{ from_mm: 0, to_mm: thickness_mm }]
}

/** Where a place across the finger stands in a side view. */
export type AcrossOnPaper = (z_mm: number) => number

/**
 * Across counts towards who looks at the face: seen from the right its larger values lie to the left, seen from the left to the right.
 *
 * @param place where the view begins on the left, its scale, and from which side it is seen
 */
export function acrossOnPaper(
  slices: readonly { readonly from_mm: number; readonly to_mm: number }[],
  { ratio, left, projection }: { readonly ratio: number; readonly left: number; readonly projection: Projection },
): AcrossOnPaper {
  const [least, most] = [slices[0].from_mm, slices[slices.length - 1].to_mm]
  return (z_mm) => left + ratio * (projection === 'third-angle' ? most - z_mm : z_mm - least)
}

/** The part seen along x: slices, the corners that are not covered, holes as hidden lines. */
export function sideView(part: Part, { placing, across: x, projection }: SidePlacing): readonly Ink[] {
  const slices = slicesOf(part)
  const y = (y_mm: number): number => placing.origin.y - placing.ratio * y_mm
  const ys = part.outline.map(({ y_mm }) => y_mm)
  const seen = seenCorners(part.outline, projection)
  return slices.flatMap(({ from_mm, to_mm }) => {
    const [left, right] = [Math.min(x(from_mm), x(to_mm)), Math.max(x(from_mm), x(to_mm))]
    const across = (y_mm: number, type: 'wide' | 'hidden' | 'centre', over = 0) =>
      stroke({ x: left - over, y: y(y_mm) }, { x: right + over, y: y(y_mm) }, type)
    const sides = [left, right].map((at) => stroke({ x: at, y: y(Math.max(...ys)) }, { x: at, y: y(Math.min(...ys)) }, 'wide'))
    const holes = part.holes.flatMap(({ at, diameter_mm }) => [
      across(at.y_mm + diameter_mm / 2, 'hidden'),
      across(at.y_mm - diameter_mm / 2, 'hidden'),
      across(at.y_mm, 'centre', CROSS_OVER),
    ])
    return [...sides, ...[...new Set(seen)].map((y_mm) => across(y_mm, 'wide')), ...distinct(holes)]
  })
}

/** Where a side view stands. */
export interface SidePlacing {
  readonly placing: Placing
  readonly across: AcrossOnPaper
  readonly projection: Projection
}

/** Heights of the corners that nothing of the part stands before, and of the outermost ones. */
function seenCorners(outline: readonly Point[], projection: Projection): readonly number[] {
  const towards = projection === 'third-angle' ? 1 : -1
  return outline.filter((corner) => !isCovered(corner, outline, towards)).map(({ y_mm }) => y_mm)
}

/** Nearer than this two heights are one. */
const NEAR_mm = 1e-6

function isCovered({ x_mm, y_mm }: Point, outline: readonly Point[], towards: number): boolean {
  return outline.some((from, index) => {
    const to = outline[(index + 1) % outline.length]
    const [low, high] = from.y_mm < to.y_mm ? [from, to] : [to, from]
    if (y_mm < low.y_mm + NEAR_mm || y_mm > high.y_mm - NEAR_mm) return false
    const there = low.x_mm + ((high.x_mm - low.x_mm) * (y_mm - low.y_mm)) / (high.y_mm - low.y_mm)
    return towards * (there - x_mm) > NEAR_mm
  })
}

/** Holes at one height are drawn once. */
function distinct<T extends Ink>(lines: readonly T[]): readonly T[] {
  return [...new Map(lines.map((line) => [JSON.stringify(line), line])).values()]
}
