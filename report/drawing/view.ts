/** From millimetres in the mount frame to px on the sheet, and from a part's own frame to the mount frame. */
import type { Point, Posture } from '../../engine/index.ts'
import type { Place } from './svg.ts'

/** A window of the sheet onto the mount frame. */
export interface View {
  readonly scale_px_mm: number
  /** Where the mount frame's origin stands on the sheet. */
  readonly origin: Place
}

/** Box in the mount frame, mm. */
export interface Box {
  readonly least: Point
  readonly most: Point
}

/** The sheet's y runs down, the mount frame's up. */
export function onSheet(view: View, point: Point): Place {
  return { x: view.origin.x + view.scale_px_mm * point.x_mm, y: view.origin.y - view.scale_px_mm * point.y_mm }
}

/** A point of a part at a posture, in the mount frame. */
export function inMount(posture: Posture, part: number, at: Point): Point {
  const [x_mm, y_mm, turn_rad] = posture.poses.subarray(3 * part, 3 * part + 3)
  const [cos, sin] = [Math.cos(turn_rad), Math.sin(turn_rad)]
  return { x_mm: x_mm + at.x_mm * cos - at.y_mm * sin, y_mm: y_mm + at.x_mm * sin + at.y_mm * cos }
}

/** A movement that was seen in the mount frame, as a part sees it. */
export function intoPart(posture: Posture, part: number, moved: Point): Point {
  const turn_rad = posture.poses[3 * part + 2]
  const [cos, sin] = [Math.cos(turn_rad), Math.sin(turn_rad)]
  return { x_mm: moved.x_mm * cos + moved.y_mm * sin, y_mm: moved.y_mm * cos - moved.x_mm * sin }
}

/** Where in the mount frame a place on the sheet lies. */
export function fromSheet(view: View, place: Place): Point {
  return { x_mm: (place.x - view.origin.x) / view.scale_px_mm, y_mm: (view.origin.y - place.y) / view.scale_px_mm }
}

/** Box around points, widened on every side. */
export function boxAround(points: readonly Point[], margin_mm: number): Box {
  const xs = points.map((point) => point.x_mm)
  const ys = points.map((point) => point.y_mm)
  return {
    least: { x_mm: Math.min(...xs) - margin_mm, y_mm: Math.min(...ys) - margin_mm },
    most: { x_mm: Math.max(...xs) + margin_mm, y_mm: Math.max(...ys) + margin_mm },
  }
}

/** The view that shows a whole box at a scale, its upper left corner at a place. */
export function viewOf(box: Box, corner: Place, scale_px_mm: number): View {
  return { scale_px_mm, origin: { x: corner.x - box.least.x_mm * scale_px_mm, y: corner.y + box.most.y_mm * scale_px_mm } }
}
