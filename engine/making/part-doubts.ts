/**
 * What of a flat part's shape is hard to make: corners that a round cutter does not reach, thin walls, deep holes.
 *
 *     inside corner of angle φ, cutter of radius r: it leaves r (1 / sin(φ/2) − 1) of metal before the corner
 *     a cutter that is no more slender than n cuts a depth t with r ≥ t / (2 n)
 */
import type { Hole, Part, Point } from '../design/design.ts'
import type { MakingDoubt } from './doubt.ts'
import { shopLimits } from './shop-limits.ts'

/** Doubts of one part. Corners and walls are those of its outline; the depth is that of its thickest slice. */
export function partDoubts(part: Part): readonly MakingDoubt[] {
  const depth_mm = depthOf(part)
  return [
    ...(depth_mm === undefined ? [] : cornerDoubts(part, depth_mm)),
    ...part.holes.flatMap((hole, index) => wallDoubts(part, hole, index)),
    ...(depth_mm === undefined ? [] : part.holes.flatMap((hole) => depthDoubts(part, hole, depth_mm))),
    ...datumDoubts(part),
  ]
}

/** Depth of the thickest slice; undefined where none is stated, mm. */
export function depthOf({ across = [], thickness_mm }: Part): number | undefined {
  const slices = across.map(({ from_mm, to_mm }) => to_mm - from_mm)
  return slices.length > 0 ? Math.max(...slices) : thickness_mm
}

function cornerDoubts({ id, outline }: Part, depth_mm: number): readonly MakingDoubt[] {
  const radius_mm = depth_mm / (2 * shopLimits.cutterSlenderness_ratio)
  const sense = Math.sign(twiceArea_mm2(outline))
  return outline.flatMap((corner, index): readonly MakingDoubt[] => {
    const before = outline[(index + outline.length - 1) % outline.length]
    const after = outline[(index + 1) % outline.length]
    const inside_rad = insideAngle(before, corner, after)
    if (sense * cross(before, corner, after) >= 0) return []
    const left_mm = radius_mm * (1 / Math.sin(inside_rad / 2) - 1)
    if (left_mm <= shopLimits.leftInCorner_mm) return []
    return [
      {
        place: `parts.${id}.outline.${index}`,
        found: `an inside corner without a radius in metal ${text(depth_mm)} mm deep`,
        needed: `room for a cutter of ${text(radius_mm)} mm radius, which leaves ${text(left_mm)} mm before this corner`,
        wayOut: 'Blunt the corner by one more point, or say on the order that the cutter’s radius may stay.',
      },
    ]
  })
}

function twiceArea_mm2(outline: readonly Point[]): number {
  return outline.reduce((sum, corner, index) => {
    const next = outline[(index + 1) % outline.length]
    return sum + corner.x_mm * next.y_mm - next.x_mm * corner.y_mm
  }, 0)
}

function cross(a: Point, b: Point, c: Point): number {
  return (b.x_mm - a.x_mm) * (c.y_mm - b.y_mm) - (b.y_mm - a.y_mm) * (c.x_mm - b.x_mm)
}

/** Between the two sides of a corner, at most a half turn. */
function insideAngle(a: Point, b: Point, c: Point): number {
  const dot = (a.x_mm - b.x_mm) * (c.x_mm - b.x_mm) + (a.y_mm - b.y_mm) * (c.y_mm - b.y_mm)
  return Math.atan2(Math.abs(cross(a, b, c)), dot)
}

/** To the outline, and to the holes that follow in the document. */
function wallDoubts({ id, outline, holes }: Part, hole: Hole, index: number): readonly MakingDoubt[] {
  const place = `parts.${id}.holes.${hole.id}`
  const toEdge = outline.map((from, corner) => wallTo(hole, from, outline[(corner + 1) % outline.length]))
  const toHoles = holes
    .slice(index + 1)
    .map((other) => ({ other, wall_mm: wallTo(hole, ...middleLine(other)) - other.diameter_mm / 2 }))
  const doubt = (wall_mm: number, beside: string): MakingDoubt => ({
    place,
    found: `a wall of ${text(wall_mm)} mm between the hole and ${beside}`,
    needed: `at least ${text(shopLimits.wallLeast_mm)} mm`,
    wayOut: 'Move the hole, or give the part more metal there.',
  })
  const thinnest = Math.min(...toEdge)
  return [
    ...(thinnest < shopLimits.wallLeast_mm ? [doubt(thinnest, 'the outline')] : []),
    ...toHoles.flatMap(({ other, wall_mm }) => (wall_mm < shopLimits.wallLeast_mm ? [doubt(wall_mm, `hole ${other.id}`)] : [])),
  ]
}

/** Of a slot the line on which its centre may lie, of a round hole its centre twice. */
function middleLine({ at, slot }: Hole): readonly [Point, Point] {
  const half_mm = (slot?.length_mm ?? 0) / 2
  const [x, y] = slot ? [Math.cos(slot.along_rad), Math.sin(slot.along_rad)] : [0, 0]
  const end = (way: number): Point => ({ x_mm: at.x_mm + way * half_mm * x, y_mm: at.y_mm + way * half_mm * y })
  return [end(-1), end(1)]
}

/** Metal between a hole and a straight line. Two straight lines that do not cross are nearest at an end of one of them. */
export function wallTo(hole: Hole, from: Point, to: Point): number {
  const [a, b] = middleLine(hole)
  const apart = [distance(a, from, to), distance(b, from, to), distance(from, a, b), distance(to, a, b)]
  return Math.min(...apart) - hole.diameter_mm / 2
}

function distance(point: Point, from: Point, to: Point): number {
  const [dx, dy] = [to.x_mm - from.x_mm, to.y_mm - from.y_mm]
  const along = dx * dx + dy * dy
  const run = along === 0 ? 0 : ((point.x_mm - from.x_mm) * dx + (point.y_mm - from.y_mm) * dy) / along
  const share = Math.min(1, Math.max(0, run))
  return Math.hypot(point.x_mm - from.x_mm - share * dx, point.y_mm - from.y_mm - share * dy)
}

function depthDoubts({ id }: Part, { id: hole, diameter_mm }: Hole, depth_mm: number): readonly MakingDoubt[] {
  const most = shopLimits.drillSlenderness_ratio
  if (depth_mm <= most * diameter_mm) return []
  return [
    {
      place: `parts.${id}.holes.${hole}`,
      found: `a hole of ${text(diameter_mm)} mm through ${text(depth_mm)} mm`,
      needed: `a depth of at most ${most} diameters, ${text(most * diameter_mm)} mm`,
      wayOut: 'Widen the hole, thin the part there, or ask the shop for a price with a long drill.',
    },
  ]
}

function datumDoubts({ id, holes }: Part): readonly MakingDoubt[] {
  const hasZone = holes.some(({ positionZone_mm = 0 }) => positionZone_mm > 0)
  if (!hasZone || holes.some(({ isDatum }) => isDatum)) return []
  return [
    {
      place: `parts.${id}.holes`,
      found: 'zones of position that are measured from no hole',
      needed: 'one hole with "datum": true, from which the others are measured',
      wayOut: 'Make the hole the datum that the part turns about, and leave its own zone out.',
    },
  ]
}

const PLACES = 2
const text = (value_mm: number): string => String(Number(value_mm.toFixed(PLACES)))
