import type { Hole, Part, Point } from '../design/design.ts'
import { polygon } from '../design/polygon.ts'

/** A flat part as a solid: its outline, with its holes, through its thickness. */
export interface PartBody {
  readonly volume_mm3: number
  /** In the part's own frame. */
  readonly centre: Point
}

/**
 * Volume and centre of a flat part with its holes taken out.
 *
 * @returns undefined without an outline or a thickness. Holes that reach over the outline are counted whole; whether they do is told when
 *          the part is looked at for making.
 */
export function partBody({ outline, thickness_mm, holes }: Part): PartBody | undefined {
  if (outline.length === 0 || thickness_mm === undefined) return undefined
  const { area_mm2, centre } = polygon(outline)
  const open = holes.map((hole) => ({ at: hole.at, area_mm2: holeArea_mm2(hole) }))
  const left_mm2 = open.reduce((sum, hole) => sum - hole.area_mm2, area_mm2)
  const moment = (axis: 'x_mm' | 'y_mm') =>
    open.reduce((sum, { at, area_mm2: cut }) => sum - cut * at[axis], area_mm2 * centre[axis])
  return {
    volume_mm3: left_mm2 * thickness_mm,
    centre: { x_mm: moment('x_mm') / left_mm2, y_mm: moment('y_mm') / left_mm2 },
  }
}

/** Of a round hole, or of a slot with round ends. */
export function holeArea_mm2({ diameter_mm, slot }: Hole): number {
  return (Math.PI / 4) * diameter_mm * diameter_mm + (slot?.length_mm ?? 0) * diameter_mm
}
