/**
 * The parts as a shop drawing shows them. Parts lie in layers: the mount on top, then the phalanges from the palm outwards, links
 * between the plates underneath. What a higher part covers is drawn dashed (ISO 128: hidden edges, dashed narrow line).
 */
import type { Design, Posture } from '../../engine/index.ts'
import { outlineOf } from './outline.ts'
import { element, pathThrough } from './svg.ts'
import { inMount, onSheet, type View } from './view.ts'

const ROLE_LAYER = { mount: 0, proximal: 1, middle: 2, distal: 3, other: 4, roller: 5, link: 6 } as const

/** What a drawing of parts needs: the design at a posture in a view, and a prefix that makes ids unique in the page. */
export interface PartsPicture {
  readonly design: Design
  readonly posture: Posture
  readonly view: View
  readonly idPrefix: string
}

/** All parts, lowest first, then the hidden edges over them. Each outline is written once and used where it shows or covers. */
export function drawParts(picture: PartsPicture): string {
  const { design, idPrefix } = picture
  const topFirst = design.parts
    .map((part, index) => ({ index, layer: ROLE_LAYER[part.role] }))
    .sort((one, other) => one.layer - other.layer || one.index - other.index)
    .map(({ index }) => index)
  const use = (index: number, attributes: Readonly<Record<string, string>> = {}): string =>
    element('use', { href: `#${idPrefix}part${index}`, ...attributes })
  const outlines = design.parts.map((_, index) => element('path', { id: `${idPrefix}part${index}`, d: partPath(picture, index) }))
  const solids = [...topFirst].reverse().map((index) => use(index, { class: solidClass(design, index) }))
  const hidden = topFirst.slice(1).map((index, place) => {
    const clip = `${idPrefix}under${index}`
    const covers = topFirst.slice(0, place + 1).map((above) => use(above))
    return element('clipPath', { id: clip }, ...covers) + use(index, { class: 'hidden', 'clip-path': `url(#${clip})` })
  })
  const hatch = use(0, { fill: `url(#${idPrefix}hatch)` })
  return [element('defs', {}, hatchPattern(idPrefix), ...outlines), ...solids, hatch, ...hidden].join('')
}

/**
 * Where two parts lie in the same place: both outlines inside each other, hatched closely. It is drawn over `drawParts`, whose outlines it
 * uses; at a posture where the two are apart nothing shows.
 */
export function drawOverlaps(idPrefix: string, pairs: readonly (readonly [number, number])[]): string {
  const use = (part: number, attributes: Readonly<Record<string, string>>): string =>
    element('use', { href: `#${idPrefix}part${part}`, ...attributes })
  const overlaps = pairs.map(([one, other]) => {
    const inside = (part: number): string => `${idPrefix}inside${one}-${other}-${part}`
    const clips = [one, other].map((part) => element('clipPath', { id: inside(part) }, use(part, {})))
    const hatched = use(other, { fill: `url(#${idPrefix}clash)`, 'clip-path': `url(#${inside(one)})` })
    const edges = [use(other, { 'clip-path': `url(#${inside(one)})` }), use(one, { 'clip-path': `url(#${inside(other)})` })]
    return [...clips, hatched, element('g', { class: 'overlap' }, ...edges)].join('')
  })
  return overlaps.length === 0 ? '' : element('defs', {}, clashPattern(idPrefix)) + overlaps.join('')
}

/** Only the outlines, in the line type for extreme positions (ISO 128: long-dashed double-dotted narrow line). */
export function drawPhantom(picture: PartsPicture): string {
  const shown = picture.design.parts
    .map((part, index) => ({ part, index }))
    .filter(({ part }) => part.role !== 'mount' && part.role !== 'link')
  return shown.map(({ index }) => element('path', { d: partPath(picture, index), class: 'phantom' })).join('')
}

/** The hatching of the fixed part. */
function hatchPattern(idPrefix: string): string {
  const stroke = element('line', { x1: 0, y1: 0, x2: 0, y2: 6, class: 'hatch-line' })
  const turned = { id: `${idPrefix}hatch`, width: 6, height: 6, patternUnits: 'userSpaceOnUse', patternTransform: 'rotate(45)' }
  return element('pattern', turned, stroke)
}

/** Closer than the hatching of the fixed part, and the other way. */
function clashPattern(idPrefix: string): string {
  const stroke = element('line', { x1: 0, y1: 0, x2: 0, y2: 3, class: 'clash-line' })
  const turned = { id: `${idPrefix}clash`, width: 3, height: 3, patternUnits: 'userSpaceOnUse', patternTransform: 'rotate(-45)' }
  return element('pattern', turned, stroke)
}

function solidClass(design: Design, index: number): string {
  return design.parts[index].role === 'link' ? 'part part-link' : 'part'
}

function partPath({ design, posture, view }: PartsPicture, index: number): string {
  return pathThrough(
    outlineOf(design.parts[index]).map((point) => onSheet(view, inMount(posture, index, point))),
    true,
  )
}
