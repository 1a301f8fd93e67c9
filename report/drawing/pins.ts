/** Pins as circles with a centre cross, and the marks for springs, stops, pads and the path of the tip. */
import type { Design, Point, Posture, Spring, Travel } from '../../engine/index.ts'
import { element, line, type Place, pathThrough, type Shape } from './svg.ts'
import { inMount, onSheet, type View } from './view.ts'

/** The centre cross stands out over the circle by this. */
const CROSS_OVER_PX = 3.5
const COIL_TURNS = 2.25
const ZIGZAGS = 8

/** What the marks need. */
export interface MarksPicture {
  readonly design: Design
  readonly posture: Posture
  readonly view: View
}

/** One circle with its centre cross. */
export function drawPin(view: View, at: Point, diameter_mm: number): readonly Shape[] {
  const centre = onSheet(view, at)
  const radius = (diameter_mm / 2) * view.scale_px_mm
  const arm = radius + CROSS_OVER_PX
  return [
    element('circle', { cx: centre.x, cy: centre.y, r: radius, class: 'pin' }),
    line({ x: centre.x - arm, y: centre.y }, { x: centre.x + arm, y: centre.y }, 'centre'),
    line({ x: centre.x, y: centre.y - arm }, { x: centre.x, y: centre.y + arm }, 'centre'),
  ]
}

/** All pins. */
export function drawPins({ design, posture, view }: MarksPicture): readonly Shape[] {
  return design.pins.flatMap((pin, index) => drawPin(view, posture.pinsAt[index], pin.diameter_mm))
}

/** Stop edges as a wide line and the round ends that meet them. */
export function drawStops({ design, posture, view }: MarksPicture): readonly Shape[] {
  return design.stops.flatMap((stop) => {
    const round = onSheet(view, inMount(posture, stop.round.part, stop.round.at))
    const end = element('circle', { cx: round.x, cy: round.y, r: stop.round.radius_mm * view.scale_px_mm, class: 'stop-round' })
    return [drawEdge({ design, posture, view }, stop.against), end]
  })
}

/** Pads: a short stroke across the skin with a dot, where the finger touches the world. */
export function drawPads({ design, posture, view }: MarksPicture): readonly Shape[] {
  return design.parts
    .flatMap((part, index) => part.pads.map((pad) => onSheet(view, inMount(posture, index, pad.at))))
    .map((place) => element('circle', { cx: place.x, cy: place.y, r: 2.4, class: 'pad' }))
}

/** Springs by their usual symbols (ISO 3952 spirit): a coil about a pin, or a zigzag between two points. */
export function drawSprings(picture: MarksPicture): readonly Shape[] {
  return picture.design.springs.map((spring) => drawSpring(picture, spring))
}

/** Path of the tip over the travel, a long-dashed dotted narrow line (ISO 128: paths of points). */
export function drawTipPath({ design, view }: MarksPicture, travel: Travel): readonly Shape[] {
  const { tip } = design
  if (tip === undefined) return []
  const at = design.parts[tip.part].pads[tip.pad].at
  const places = travel.postures.map((posture) => onSheet(view, inMount(posture, tip.part, at)))
  return [element('path', { d: pathThrough(places, false), class: 'path' })]
}

function drawEdge({ design, posture, view }: MarksPicture, against: { readonly part: number; readonly edge: number }): Shape {
  const edge = design.parts[against.part].edges[against.edge]
  const place = (point: Point): Place => onSheet(view, inMount(posture, against.part, point))
  if (edge.kind === 'straight') return line(place(edge.from), place(edge.to), 'stop-edge')
  const swept = edge.to_rad - edge.from_rad
  const points = Array.from({ length: 25 }, (_, index) => {
    const angle = edge.from_rad + (swept * index) / 24
    return {
      x_mm: edge.centre.x_mm + edge.radius_mm * Math.cos(angle),
      y_mm: edge.centre.y_mm + edge.radius_mm * Math.sin(angle),
    }
  })
  return element('path', { d: pathThrough(points.map(place), false), class: 'stop-edge' })
}

function drawSpring(picture: MarksPicture, spring: Spring): Shape {
  if (spring.kind === 'torsion') return drawCoil(picture, spring)
  const from = onSheet(picture.view, inMount(picture.posture, spring.from.part, spring.from.at))
  const to = onSheet(picture.view, inMount(picture.posture, spring.to.part, spring.to.at))
  return element('path', { d: pathThrough(zigzag(from, to), false), class: 'spring' })
}

function drawCoil({ design, posture, view }: MarksPicture, spring: Spring & { readonly kind: 'torsion' }): Shape {
  const centre = onSheet(view, posture.pinsAt[spring.pin])
  const inner = (design.pins[spring.pin].diameter_mm / 2) * view.scale_px_mm + 2.5
  const end = -posture.poses[3 * spring.on + 2]
  const places = Array.from({ length: 81 }, (_, index) => {
    const share = index / 80
    const angle = end - (1 - share) * COIL_TURNS * 2 * Math.PI
    const radius = inner + share * 8
    return { x: centre.x + radius * Math.cos(angle), y: centre.y + radius * Math.sin(angle) }
  })
  const tail = { x: centre.x + (inner + 20) * Math.cos(end), y: centre.y + (inner + 20) * Math.sin(end) }
  return element('path', { d: pathThrough([...places, tail], false), class: 'spring' })
}

function zigzag(from: Place, to: Place): readonly Place[] {
  const length = Math.hypot(to.x - from.x, to.y - from.y)
  if (length < 1) return [from, to]
  const along = { x: (to.x - from.x) / length, y: (to.y - from.y) / length }
  const at = (share: number, aside: number): Place => ({
    x: from.x + share * (to.x - from.x) - aside * along.y,
    y: from.y + share * (to.y - from.y) + aside * along.x,
  })
  const turns = Array.from({ length: ZIGZAGS }, (_, index) => at(0.2 + (0.6 * (index + 0.5)) / ZIGZAGS, index % 2 === 0 ? 5 : -5))
  return [from, at(0.2, 0), ...turns, at(0.8, 0), to]
}
