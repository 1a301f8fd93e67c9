/**
 * Where the balloons of a drawing stand: in two rows, above and below the part, each over what it belongs to as nearly as its neighbours let it.
 * A row is filled from left to right with a step between balloons and then moved as a whole to where it stands nearest; no two overlap.
 */
import type { Place } from '../drawing/svg.ts'

/** What a balloon belongs to, and where that is on the sheet. */
export interface Anchor {
  readonly number: number
  readonly at: Place
}

export interface Balloon extends Anchor {
  readonly centre: Place
}

/** Where the rows stand, px. */
export interface Rows {
  /** Heights of the rows. */
  readonly above: number
  readonly below: number
  /** Height that parts the two: anchors over it go up. */
  readonly middle: number
  /** Between the centres of neighbours, at least. */
  readonly step: number
}

/** Places balloons; the same anchors give the same places. */
export function balloonPlaces(anchors: readonly Anchor[], rows: Rows): readonly Balloon[] {
  const isAbove = ({ at }: Anchor): boolean => at.y < rows.middle
  return [
    ...rowOf(anchors.filter(isAbove), { y: rows.above, step: rows.step }),
    ...rowOf(
      anchors.filter((anchor) => !isAbove(anchor)),
      { y: rows.below, step: rows.step },
    ),
  ].toSorted((one, other) => one.number - other.number)
}

function rowOf(anchors: readonly Anchor[], { y, step }: { readonly y: number; readonly step: number }): readonly Balloon[] {
  const sorted = anchors.toSorted((one, other) => one.at.x - other.at.x || one.number - other.number)
  let next = -Infinity
  const xs = sorted.map(({ at }) => {
    next = Math.max(at.x, next + step)
    return next
  })
  const off = sorted.reduce((sum, { at }, index) => sum + xs[index] - at.x, 0) / Math.max(1, sorted.length)
  return sorted.map((anchor, index) => ({ ...anchor, centre: { x: xs[index] - off, y } }))
}
