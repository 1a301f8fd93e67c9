/**
 * Parts that are taken for one another: mirror images, and such as differ by less than an eye sees.
 *
 * One part is laid on the other by each of its sides in turn, as it is and turned over; how far corners and holes then lie apart at most says
 * how much they differ. The bound for their likeness is far below a side's length, so that a wrong side never fits.
 */
import type { Part, Point } from '../design/design.ts'
import type { MakingDoubt } from './doubt.ts'
import { shopLimits } from './shop-limits.ts'

/** Nearer than this two parts are the same part: nothing is confused. */
const SAME_mm = 1e-3

/** One doubt for each pair that is alike. */
export function twinDoubts(parts: readonly Part[]): readonly MakingDoubt[] {
  return parts.flatMap((one, index) => parts.slice(index + 1).flatMap((other) => pairDoubt(one, other)))
}

function pairDoubt(one: Part, other: Part): readonly MakingDoubt[] {
  if (one.outline.length !== other.outline.length || one.holes.length !== other.holes.length || one.outline.length === 0)
    return []
  const asIs_mm = leastApart(one, other)
  const over_mm = leastApart(turnedOver(one), other)
  if (asIs_mm <= SAME_mm || Math.min(asIs_mm, over_mm) > shopLimits.alike_mm) return []
  const isMirror = over_mm < asIs_mm
  const found = isMirror
    ? `a part that is the mirror image of ${other.name}`
    : `a part that differs from ${other.name} by ${asIs_mm.toFixed(2)} mm only`
  return [
    {
      place: `parts.${one.id}`,
      found,
      needed: 'parts that nobody takes for one another',
      wayOut: 'Make them one part, or mark one of them: a notch, a number, a hole that the other has not.',
    },
  ]
}

function turnedOver(part: Part): Part {
  const over = ({ x_mm, y_mm }: Point): Point => ({ x_mm, y_mm: -y_mm })
  return {
    ...part,
    outline: part.outline.map(over).toReversed(),
    holes: part.holes.map((hole) => ({ ...hole, at: over(hole.at) })),
  }
}

function leastApart(one: Part, other: Part): number {
  return Math.min(...one.outline.map((_, shift) => apart({ one, other, shift })))
}

interface Laid {
  readonly one: Part
  readonly other: Part
  /** Corner of one that is laid on the first of the other. */
  readonly shift: number
}

function apart({ one, other, shift }: Laid): number {
  const count = one.outline.length
  const corners = one.outline.map((_, index) => one.outline[(index + shift) % count])
  const move = laying([corners[0], corners[1]], [other.outline[0], other.outline[1]])
  const ofCorners = corners.map((corner, index) => distance(move(corner), other.outline[index]))
  const ofHoles = one.holes.map(({ at, diameter_mm }) => {
    const fits = other.holes.map((hole) => Math.max(distance(move(at), hole.at), Math.abs(hole.diameter_mm - diameter_mm)))
    return Math.min(...fits)
  })
  return Math.max(...ofCorners, ...ofHoles)
}

/** Lays one side on another by their middles and directions. */
function laying([a, b]: readonly [Point, Point], [c, d]: readonly [Point, Point]): (point: Point) => Point {
  const turn_rad = Math.atan2(d.y_mm - c.y_mm, d.x_mm - c.x_mm) - Math.atan2(b.y_mm - a.y_mm, b.x_mm - a.x_mm)
  const [cos, sin] = [Math.cos(turn_rad), Math.sin(turn_rad)]
  const [from, to] = [middle(a, b), middle(c, d)]
  return ({ x_mm, y_mm }) => {
    const [x, y] = [x_mm - from.x_mm, y_mm - from.y_mm]
    return { x_mm: to.x_mm + x * cos - y * sin, y_mm: to.y_mm + x * sin + y * cos }
  }
}

const middle = (a: Point, b: Point): Point => ({ x_mm: (a.x_mm + b.x_mm) / 2, y_mm: (a.y_mm + b.y_mm) / 2 })
const distance = (a: Point, b: Point): number => Math.hypot(a.x_mm - b.x_mm, a.y_mm - b.y_mm)
