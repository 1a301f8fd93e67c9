/**
 * The toggle drawn larger, as a detail view on a shop drawing. In the circle one sees why the finger lets go or jams: the link A-B
 * hands its force to the part B-C along a line that touches the friction circles of its two pins; where that line passes pin C
 * outside of its friction circle the link can turn the part, where it runs through the circle friction alone can stop it.
 */
import type { Point } from '../../engine/index.ts'
import { say } from '../tables/value-text.ts'
import { arcArrow, arcLine, arrowHead, onArc } from './arrows.ts'
import { captionOf, drawForceLine, type ForceDetail } from './detail-force.ts'
import { leverOf, seenToggle } from './force-line.ts'
import { boxAt, boxesAlong, drawLabel, type Label, placeLabels } from './labels.ts'
import { drawParts } from './parts.ts'
import { drawPin } from './pins.ts'
import { element, lettering, line, type Place, type Shape } from './svg.ts'
import { onSheet, type View } from './view.ts'

/** Metal shown around the two pins of the toggle. */
const AROUND_MM = 2.3
const LABEL_PX = 12.5
/** Half of the square that fits into the circle: labels stay in it. */
const INSIDE_RATIO = 0.76
/** A margin arc shorter than this gets its arrows from outside. */
const ARC_ROOM_PX = 34

/** What the detail shows and where it stands on the sheet. */
export interface Detail extends ForceDetail {
  readonly mainScale_px_mm: number
  readonly idPrefix: string
}

/** Centre and radius of the detail's circle in the mount frame, to be ringed in the main view. */
export function detailArea({ design, posture, toggle }: Pick<Detail, 'design' | 'posture' | 'toggle'>): {
  at: Point
  radius_mm: number
} {
  const { bend, arm } = seenToggle(design, toggle)
  const [b, c] = [posture.pinsAt[bend], posture.pinsAt[arm]]
  const at = { x_mm: (b.x_mm + c.x_mm) / 2, y_mm: (b.y_mm + c.y_mm) / 2 }
  return { at, radius_mm: Math.hypot(b.x_mm - c.x_mm, b.y_mm - c.y_mm) / 2 + AROUND_MM }
}

/** The detail with its ring, dimensions, labels and caption. */
export function drawDetail(detail: Detail): readonly Shape[] {
  const { ratio, view } = detailView(detail)
  const { centre, radius, idPrefix } = detail
  const clip = `${idPrefix}detail`
  const circle = { cx: centre.x, cy: centre.y, r: radius }
  const clipPath = element('clipPath', { id: clip }, element('circle', circle))
  const inside = element('g', { 'clip-path': `url(#${clip})` }, insideOf(detail, view))
  const title = `Detail Z  ${ratio} : 1`
  const caption = captionOf(detail).map((words, index) =>
    lettering(
      words,
      { x: centre.x, y: centre.y + radius + 40 + 17 * index },
      { class: 'caption', 'text-anchor': 'middle', 'font-size': 13 },
    ),
  )
  return [
    clipPath,
    element('circle', { ...circle, class: 'detail-paper' }),
    inside,
    element('circle', { ...circle, class: 'ring' }),
    lettering(
      title,
      { x: centre.x, y: centre.y + radius + 20 },
      { class: 'detail-title', 'text-anchor': 'middle', 'font-size': 13 },
    ),
    ...caption,
  ]
}

function detailView(detail: Detail): { readonly ratio: number; readonly view: View } {
  const { at, radius_mm } = detailArea(detail)
  const ratio = Math.max(2, Math.floor(detail.radius / radius_mm / detail.mainScale_px_mm))
  const scale_px_mm = ratio * detail.mainScale_px_mm
  const origin = { x: detail.centre.x - at.x_mm * scale_px_mm, y: detail.centre.y + at.y_mm * scale_px_mm }
  return { ratio, view: { scale_px_mm, origin } }
}

function insideOf(detail: Detail, view: View): readonly Shape[] {
  const { design, posture, toggle, centre, radius } = detail
  const { far: a, bend: b, arm: c } = seenToggle(design, toggle)
  const [atA, atB, atC] = [a, b, c].map((pin) => onSheet(view, posture.pinsAt[pin]))
  const pins = [b, c].flatMap((pin) => drawPin(view, posture.pinsAt[pin], design.pins[pin].diameter_mm))
  const named = (pin: number) => ({ id: design.pins[pin].id, radius: (design.pins[pin].diameter_mm / 2) * view.scale_px_mm })
  const margin = drawMargin({ atA, atB, atC, margin_rad: posture.margins_rad[toggle] })
  const action = drawForceLine(detail, view)
  const sheet = boxAt(centre, radius * INSIDE_RATIO)
  const labels = placeLabels(
    [
      margin.label,
      ...(action === undefined ? [] : action.labels),
      pinLabel(named(b), atB, Math.atan2(atB.y - centre.y, atB.x - centre.x)),
      pinLabel(named(c), atC, Math.atan2(atC.y - centre.y, atC.x - centre.x)),
    ],
    {
      sheet,
      obstacles: [
        boxAt(atB, named(b).radius * 0.8),
        boxAt(atC, named(c).radius * 0.8),
        ...margin.obstacles,
        ...(action?.obstacles ?? []),
      ],
    },
  )
  return [
    ...drawParts({ design, posture, view, idPrefix: `${detail.idPrefix}d` }),
    ...pins,
    ...frictionCircles(detail, view),
    ...margin.shapes,
    ...(action?.shapes ?? []),
    ...labels.flatMap(drawLabel),
  ]
}

function pinLabel(pin: { id: string; radius: number }, anchor: Place, prefers_rad: number): Label {
  return { words: pin.id, anchor, clear_px: pin.radius + 8, prefers_rad, className: 'name', size_px: LABEL_PX }
}

/** Extension line of A-B beyond B, the line B-C, and the arc between them with its angle. */
function drawMargin(toggle: { atA: Place; atB: Place; atC: Place; margin_rad: number }) {
  const { atA, atB, atC, margin_rad } = toggle
  const reach = Math.hypot(atC.x - atB.x, atC.y - atB.y)
  const straight = Math.atan2(atB.y - atA.y, atB.x - atA.x)
  const bent = Math.atan2(atC.y - atB.y, atC.x - atB.x)
  const turn = Math.atan2(Math.sin(bent - straight), Math.cos(bent - straight))
  const beyond = { x: atB.x + 1.5 * reach * Math.cos(straight), y: atB.y + 1.5 * reach * Math.sin(straight) }
  const farC = { x: atB.x + 1.5 * reach * Math.cos(bent), y: atB.y + 1.5 * reach * Math.sin(bent) }
  const arc = { centre: atB, radius: 1.2 * reach, from_rad: straight, to_rad: straight + turn }
  const anchor = onArc(arc, straight + turn / 2)
  const label = {
    words: marginWords(margin_rad),
    anchor,
    clear_px: 7,
    prefers_rad: straight + turn / 2,
    className: 'dimension',
    size_px: 14,
  }
  return {
    shapes: [line(atA, beyond, 'extension'), line(atB, farC, 'extension'), ...marginArc(arc)],
    label,
    obstacles: [...boxesAlong(atB, beyond, 3), ...boxesAlong(atB, farC, 3)],
  }
}

function marginWords(margin_rad: number): string {
  return margin_rad < 0 ? `${say(-margin_rad, 'rad')} past` : say(margin_rad, 'rad')
}

function marginArc(arc: { centre: Place; radius: number; from_rad: number; to_rad: number }): readonly Shape[] {
  const sense = Math.sign(arc.to_rad - arc.from_rad)
  if (Math.abs(arc.to_rad - arc.from_rad) * arc.radius > ARC_ROOM_PX) {
    const backHead = arrowHead(onArc(arc, arc.from_rad), arc.from_rad - (sense * Math.PI) / 2, 'measure head')
    return [...arcArrow(arc, 'measure'), backHead]
  }
  const tail = (sense * 24) / arc.radius
  const before = { ...arc, from_rad: arc.from_rad - tail, to_rad: arc.from_rad }
  const after = { ...arc, from_rad: arc.to_rad + tail, to_rad: arc.to_rad }
  return [...arcArrow(before, 'measure'), ...arcArrow(after, 'measure'), arcLine(arc, 'measure shaft')]
}

function frictionCircles({ design, forces, toggle, posture }: Detail, view: View): readonly Shape[] {
  const { bend: b, arm: c } = seenToggle(design, toggle)
  return [b, c].flatMap((pin) => {
    const lever_mm = leverOf(forces, pin)
    if (lever_mm === undefined) return []
    const at = onSheet(view, posture.pinsAt[pin])
    return [element('circle', { cx: at.x, cy: at.y, r: lever_mm * view.scale_px_mm, class: 'friction' })]
  })
}
