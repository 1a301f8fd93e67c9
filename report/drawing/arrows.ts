/** Arrows for forces and couples. Heads are drawn, not borrowed from markers, so that files need no ids. */
import { element, line, type Place, px, type Shape } from './svg.ts'

const HEAD_LENGTH_PX = 9
const HEAD_HALF_WIDTH_PX = 3.2

/** An arrowhead with its point at a place, flying along a direction (rad on the sheet, positive down). */
export function arrowHead(point: Place, along_rad: number, className: string): Shape {
  const corner = (side: number): string => {
    const x = point.x - HEAD_LENGTH_PX * Math.cos(along_rad) - side * HEAD_HALF_WIDTH_PX * Math.sin(along_rad)
    const y = point.y - HEAD_LENGTH_PX * Math.sin(along_rad) + side * HEAD_HALF_WIDTH_PX * Math.cos(along_rad)
    return `${px(x)},${px(y)}`
  }
  return element('polygon', { points: `${px(point.x)},${px(point.y)} ${corner(1)} ${corner(-1)}`, class: className })
}

/** A straight arrow that ends at `to`. */
export function arrow(from: Place, to: Place, className: string): readonly Shape[] {
  const along = Math.atan2(to.y - from.y, to.x - from.x)
  const neck = { x: to.x - 0.8 * HEAD_LENGTH_PX * Math.cos(along), y: to.y - 0.8 * HEAD_LENGTH_PX * Math.sin(along) }
  return [line(from, neck, `${className} shaft`), arrowHead(to, along, `${className} head`)]
}

/** An arc about a centre from one angle to another (rad on the sheet), with a head at its end. */
export function arcArrow(arc: ArcOnSheet, className: string): readonly Shape[] {
  const sense = Math.sign(arc.to_rad - arc.from_rad)
  const end = onArc(arc, arc.to_rad)
  return [arcLine(arc, `${className} shaft`), arrowHead(end, arc.to_rad + (sense * Math.PI) / 2, `${className} head`)]
}

/** Arc on the sheet; angles grow clockwise because y runs down. */
export interface ArcOnSheet {
  readonly centre: Place
  readonly radius: number
  readonly from_rad: number
  readonly to_rad: number
}

/** The arc alone. */
export function arcLine(arc: ArcOnSheet, className: string): Shape {
  const [from, to] = [onArc(arc, arc.from_rad), onArc(arc, arc.to_rad)]
  const large = Math.abs(arc.to_rad - arc.from_rad) > Math.PI ? 1 : 0
  const sweep = arc.to_rad > arc.from_rad ? 1 : 0
  const d = `M${px(from.x)} ${px(from.y)}A${px(arc.radius)} ${px(arc.radius)} 0 ${large} ${sweep} ${px(to.x)} ${px(to.y)}`
  return element('path', { d, class: className })
}

/** Place on an arc's circle. */
export function onArc(arc: ArcOnSheet, angle_rad: number): Place {
  return { x: arc.centre.x + arc.radius * Math.cos(angle_rad), y: arc.centre.y + arc.radius * Math.sin(angle_rad) }
}
