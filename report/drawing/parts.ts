/**
 * The parts as a shop drawing shows them. Parts lie in layers: the mount on top, then the phalanges from the palm outwards, links
 * between the plates underneath. What a higher part covers is drawn dashed (ISO 128: hidden edges, dashed narrow line).
 */
import type { Design, Part, Posture } from '../../engine/index.ts'
import { coveredStretches } from './covered-stretches.ts'
import { outlineOf } from './outline.ts'
import { type Attribute, element, pathThrough, px, type Shape } from './svg.ts'
import { inMount, onSheet, type View } from './view.ts'

const ROLE_LAYER = { mount: 0, proximal: 1, middle: 2, distal: 3, other: 4, roller: 5, link: 6 } as const

/** What a drawing of parts needs: the design at a posture in a view, and a prefix that makes ids unique in the page. */
export interface PartsPicture {
  readonly design: Design
  readonly posture: Posture
  readonly view: View
  readonly idPrefix: string
}

/**
 * All parts, lowest first, then the hidden edges over them. Each outline is written in its part's own frame and set at the part's place:
 * from posture to posture only the places change.
 */
export function drawParts(picture: PartsPicture): readonly Shape[] {
  const { design, idPrefix } = picture
  const topFirst = design.parts
    .map((part, index) => ({ index, layer: ROLE_LAYER[part.role] }))
    .sort((one, other) => one.layer - other.layer || one.index - other.index)
    .map(({ index }) => index)
  const outline = outlinesAt(picture)
  const solids = [...topFirst].reverse().map((index) => outline(index, { class: solidClass(design, index), 'data-part': index }))
  const hatch = outline(0, { fill: `url(#${idPrefix}hatch)`, 'data-part': 0 })
  return [element('defs', {}, hatchPattern(idPrefix)), ...solids, hatch, ...hiddenEdges(picture, topFirst)]
}

/** What each part but the top one has under those above it; one that lies free has an empty path, so that paths keep their order. */
function hiddenEdges({ design, posture, view }: PartsPicture, topFirst: readonly number[]): readonly Shape[] {
  const outlines = topFirst.map((index) => {
    const places = outlineOf(design.parts[index]).map((point) => onSheet(view, inMount(posture, index, point)))
    return Float64Array.from(places.flatMap(({ x, y }) => [x, y]))
  })
  return topFirst.slice(1).map((part, above) => {
    const stretches = coveredStretches(outlines[above + 1], outlines.slice(0, above + 1))
    const d = stretches.map((places) => pathThrough(places, false)).join('')
    return element('path', { d, class: 'hidden', 'data-part': part })
  })
}

/**
 * Where two parts lie in the same place: both outlines inside each other, hatched closely. It is drawn over `drawParts`; at a posture where
 * the two are apart nothing shows.
 */
export function drawOverlaps(picture: PartsPicture, pairs: readonly (readonly [number, number])[]): readonly Shape[] {
  const { idPrefix } = picture
  const outline = outlinesAt(picture)
  const overlaps = pairs.flatMap(([one, other]) => {
    const inside = (part: number): string => `${idPrefix}inside${one}-${other}-${part}`
    const clips = [one, other].map((part) => element('clipPath', { id: inside(part) }, outline(part)))
    const hatched = within(inside(one), outline(other, { fill: `url(#${idPrefix}clash)` }))
    const edges = [within(inside(one), outline(other)), within(inside(other), outline(one))]
    return [...clips, hatched, element('g', { class: 'overlap' }, edges)]
  })
  return overlaps.length === 0 ? [] : [element('defs', {}, clashPattern(idPrefix)), ...overlaps]
}

/** Outlines where their parts stand. */
function outlinesAt({ design, posture, view }: PartsPicture) {
  return (index: number, attributes: Readonly<Record<string, Attribute>> = {}): Shape =>
    element('path', { d: ownPath(design.parts[index], view), transform: placeOf(posture, view, index), ...attributes })
}

/** The clip is in the sheet's frame and must not be turned with the part. */
function within(clip: string, shape: Shape): Shape {
  return element('g', { 'clip-path': `url(#${clip})` }, shape)
}

/** A part's own frame on the sheet. A thousandth of a degree is less than a hundredth of a px at the end of a finger. */
function placeOf(posture: Posture, view: View, index: number): string {
  const [x_mm, y_mm, turn_rad] = posture.poses.subarray(3 * index, 3 * index + 3)
  const { x, y } = onSheet(view, { x_mm, y_mm })
  const clockwise_deg = Math.round((-turn_rad * 180_000) / Math.PI) / 1000
  return `translate(${px(x)} ${px(y)}) rotate(${clockwise_deg})`
}

/** The outline in the part's own frame, at the scale of the sheet. */
function ownPath(part: Part, { scale_px_mm }: View): string {
  const own = { scale_px_mm, origin: { x: 0, y: 0 } }
  return pathThrough(
    outlineOf(part).map((point) => onSheet(own, point)),
    true,
  )
}

/** Only the outlines, in the line type for extreme positions (ISO 128: long-dashed double-dotted narrow line). */
export function drawPhantom(picture: PartsPicture): readonly Shape[] {
  const shown = picture.design.parts
    .map((part, index) => ({ part, index }))
    .filter(({ part }) => part.role !== 'mount' && part.role !== 'link')
  return shown.map(({ part, index }) =>
    element('path', {
      d: ownPath(part, picture.view),
      transform: placeOf(picture.posture, picture.view, index),
      class: 'phantom',
    }),
  )
}

/** The hatching of the fixed part. */
function hatchPattern(idPrefix: string): Shape {
  const stroke = element('line', { x1: 0, y1: 0, x2: 0, y2: 6, class: 'hatch-line' })
  const turned = { id: `${idPrefix}hatch`, width: 6, height: 6, patternUnits: 'userSpaceOnUse', patternTransform: 'rotate(45)' }
  return element('pattern', turned, stroke)
}

/** Closer than the hatching of the fixed part, and the other way. */
function clashPattern(idPrefix: string): Shape {
  const stroke = element('line', { x1: 0, y1: 0, x2: 0, y2: 3, class: 'clash-line' })
  const turned = { id: `${idPrefix}clash`, width: 3, height: 3, patternUnits: 'userSpaceOnUse', patternTransform: 'rotate(-45)' }
  return element('pattern', turned, stroke)
}

function solidClass(design: Design, index: number): string {
  return design.parts[index].role === 'link' ? 'part part-link' : 'part'
}
