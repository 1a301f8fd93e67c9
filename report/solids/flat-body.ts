/**
 * Flat bodies: closed contours in the plane, drawn out from one height to another. Parts are one body for each slice, pins are one of a circle.
 * A contour runs so that the material lies to its left: outlines counter-clockwise, openings clockwise.
 */
import type { Hole, Part, Pin, Point } from '../../engine/index.ts'

/** A piece of a contour, from the end of the one before. `about` is the centre of an arc; its sense is that of the contour's turn. */
export interface Piece {
  readonly from: Point
  readonly to: Point
  readonly arc?: { readonly centre: Point; readonly radius_mm: number; readonly turn: 'left' | 'right' }
}

export type Contour = readonly Piece[]

/** One body. The first contour is its outline. */
export interface FlatBody {
  readonly contours: readonly Contour[]
  readonly from_mm: number
  readonly to_mm: number
}

/**
 * The bodies of a flat part in its own frame, z across the finger: one for each slice in which it lies, or one from 0 to its thickness.
 * What joins the slices of a fork is not in the document and not in the bodies.
 *
 * @returns none without an outline, or with neither slices nor a thickness
 */
export function partBodies({ outline, across = [], thickness_mm, holes }: Part): readonly FlatBody[] {
  if (outline.length === 0) return []
  const whole = thickness_mm === undefined ? [] : [{ from_mm: 0, to_mm: thickness_mm }]
  const contours = [polygonContour(outline), ...holes.map(holeContour)]
  return (across.length > 0 ? across : whole).map(({ from_mm, to_mm }) => ({ contours, from_mm, to_mm }))
}

/** A pin as a cylinder about the origin, from 0 to its length. */
export function pinBody({ diameter_mm }: Pin, length_mm: number): FlatBody {
  return { contours: [circleContour({ x_mm: 0, y_mm: 0 }, diameter_mm / 2, 'left')], from_mm: 0, to_mm: length_mm }
}

/** Corners in either sense come out counter-clockwise. */
function polygonContour(corners: readonly Point[]): Contour {
  const twice_mm2 = corners.reduce((sum, corner, index) => {
    const next = corners[(index + 1) % corners.length]
    return sum + corner.x_mm * next.y_mm - next.x_mm * corner.y_mm
  }, 0)
  const turned = twice_mm2 < 0 ? corners.toReversed() : corners
  return turned.map((from, index) => ({ from, to: turned[(index + 1) % turned.length] }))
}

/** A round hole as two half circles, a slot as two half circles and two straights, clockwise. */
function holeContour({ at, diameter_mm, slot }: Hole): Contour {
  const radius_mm = diameter_mm / 2
  if (!slot) return circleContour(at, radius_mm, 'right')
  const [x, y] = [Math.cos(slot.along_rad), Math.sin(slot.along_rad)]
  const place = (along_mm: number, aside_mm: number): Point => ({
    x_mm: at.x_mm + along_mm * x - aside_mm * y,
    y_mm: at.y_mm + along_mm * y + aside_mm * x,
  })
  const half_mm = slot.length_mm / 2
  const [a, b] = [place(-half_mm, radius_mm), place(half_mm, radius_mm)]
  const [c, d] = [place(half_mm, -radius_mm), place(-half_mm, -radius_mm)]
  return [
    { from: a, to: b },
    { from: b, to: c, arc: { centre: place(half_mm, 0), radius_mm, turn: 'right' } },
    { from: c, to: d },
    { from: d, to: a, arc: { centre: place(-half_mm, 0), radius_mm, turn: 'right' } },
  ]
}

/** Two halves: an edge that begins and ends in one point would need a seam. */
function circleContour(centre: Point, radius_mm: number, turn: 'left' | 'right'): Contour {
  const right = { x_mm: centre.x_mm + radius_mm, y_mm: centre.y_mm }
  const left = { x_mm: centre.x_mm - radius_mm, y_mm: centre.y_mm }
  const arc = { centre, radius_mm, turn } as const
  return [
    { from: right, to: left, arc },
    { from: left, to: right, arc },
  ]
}
