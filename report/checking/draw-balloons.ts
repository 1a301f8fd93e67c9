/** A part with the numbers of its characteristics, as a drawing for the bench: outline, holes with their centres, touched edges, balloons. */
import type { Characteristic, Part, Point } from '../../engine/index.ts'
import { fileText } from '../drawing/file-text.ts'
import { outlineOf } from '../drawing/outline.ts'
import { element, lettering, line, type Place, pathThrough, type Shape } from '../drawing/svg.ts'
import { boxAround, onSheet, type View, viewOf } from '../drawing/view.ts'
import { type Balloon, balloonPlaces } from './balloon-places.ts'

const RADIUS_px = 11
/** Between the centres of neighbours: a balloon and a gap that a pencil fits in. */
const STEP_px = 2 * RADIUS_px + 5
/** Width that the part itself is drawn in at most, and the largest scale: a small link is not blown up to a page. */
const PART_px = 520
const SCALE_most_px_mm = 14
const ROW_px = 34
const MARGIN_px = 18
const CENTRE_px = 4

/** @returns undefined for a part without characteristics: there is nothing to number */
export function drawBalloons(part: Part, plan: readonly Characteristic[]): Shape | undefined {
  const own = plan.filter(({ piece }) => piece.kind === 'part' && piece.id === part.id)
  if (own.length === 0) return undefined
  const box = boxAround([...outlineOf(part), ...part.holes.map(({ at }) => at)], 0)
  const [width_mm, height_mm] = [box.most.x_mm - box.least.x_mm, box.most.y_mm - box.least.y_mm]
  const scale = Math.min(SCALE_most_px_mm, PART_px / Math.max(width_mm, height_mm, 1))
  const top = MARGIN_px + 2 * RADIUS_px + ROW_px
  const bottom = top + height_mm * scale
  const view = viewOf(box, { x: 0, y: top }, scale)
  const anchors = own.map((one) => ({ number: one.number, at: onSheet(view, anchorOf(one, part)) }))
  const rows = { above: top - ROW_px, below: bottom + ROW_px, middle: (top + bottom) / 2, step: STEP_px }
  const balloons = balloonPlaces(anchors, rows)
  const left = Math.min(0, ...balloons.map(({ centre }) => centre.x - RADIUS_px)) - MARGIN_px
  const right = Math.max(width_mm * scale, ...balloons.map(({ centre }) => centre.x + RADIUS_px)) + MARGIN_px
  const height = bottom + ROW_px + RADIUS_px + MARGIN_px
  const size = {
    viewBox: `${Math.floor(left)} 0 ${Math.ceil(right - left)} ${Math.ceil(height)}`,
    width: Math.ceil(right - left),
  }
  const head = { class: 'drawing', xmlns: 'http://www.w3.org/2000/svg', role: 'img', 'aria-label': `${part.name}, numbered` }
  const title = lettering(part.name, { x: left + MARGIN_px, y: height - 4 }, { class: 'caption', 'font-size': 12 })
  return element('svg', { ...head, ...size, height: Math.ceil(height) }, drawPart(part, view), balloons.map(drawBalloon), title)
}

/** The same as a file of its own. */
export function balloonFile(part: Part, plan: readonly Characteristic[]): string | undefined {
  const drawn = drawBalloons(part, plan)
  return drawn && fileText(drawn)
}

/** Where a characteristic is on its part: its hole, the middle of its edge, or between the holes farthest apart. */
function anchorOf({ id }: Characteristic, part: Part): Point {
  const [, , collection, name] = id.split('.')
  const hole = part.holes.find((one) => collection === 'holes' && one.id === name)
  if (hole) return id.endsWith('.diameter') ? { ...hole.at, y_mm: hole.at.y_mm + hole.diameter_mm / 2 } : hole.at
  const edge = part.edges.find((one) => collection === 'edges' && one.id === name)
  if (edge) return edge.kind === 'straight' ? between(edge.from, edge.to) : edge.centre
  const [first, last] = [part.holes[0], part.holes[part.holes.length - 1]]
  return first && last ? between(first.at, last.at) : { x_mm: 0, y_mm: 0 }
}

const between = (one: Point, other: Point): Point => ({
  x_mm: (one.x_mm + other.x_mm) / 2,
  y_mm: (one.y_mm + other.y_mm) / 2,
})

function drawPart(part: Part, view: View): readonly Shape[] {
  const outline = outlineOf(part).map((point) => onSheet(view, point))
  const holes = part.holes.flatMap(({ at, diameter_mm }) => {
    const { x, y } = onSheet(view, at)
    const radius = (diameter_mm / 2) * view.scale_px_mm
    const reach = radius + CENTRE_px
    return [
      element('circle', { cx: x, cy: y, r: radius, class: 'pin' }),
      line({ x: x - reach, y }, { x: x + reach, y }, 'centre'),
      line({ x, y: y - reach }, { x, y: y + reach }, 'centre'),
    ]
  })
  const edges = part.edges.flatMap((edge) =>
    edge.kind === 'straight' ? [line(onSheet(view, edge.from), onSheet(view, edge.to), 'stop-edge')] : [],
  )
  return [element('path', { d: pathThrough(outline, true), class: 'part' }), ...holes, ...edges]
}

function drawBalloon({ number, at, centre }: Balloon): Shape {
  const text = { 'text-anchor': 'middle', 'font-size': 11, class: 'value' }
  return element(
    'g',
    {},
    line(towards(centre, at), at, 'leader'),
    element('circle', { cx: centre.x, cy: centre.y, r: RADIUS_px, class: 'ring' }),
    lettering(String(number), { x: centre.x, y: centre.y + 4 }, text),
  )
}

/** The point of a balloon's ring that faces what it belongs to. */
function towards(centre: Place, at: Place): Place {
  const length = Math.hypot(at.x - centre.x, at.y - centre.y)
  const share = length > RADIUS_px ? RADIUS_px / length : 0
  return { x: centre.x + share * (at.x - centre.x), y: centre.y + share * (at.y - centre.y) }
}
