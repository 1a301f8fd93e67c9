/** A sheet to be laid over the finger: rings and outlines about the things that are looked at. */
import type { Design, Posture } from '../../engine/index.ts'
import type { FingerSheet } from './layout-finger.ts'
import { outlineOf } from './outline.ts'
import { standingPlaces } from './standing-places.ts'
import { element, pathThrough, px, type Shape } from './svg.ts'
import { inMount, onSheet } from './view.ts'

const RING_PX = 15

/** What is marked: a posture on its sheet, and the place in the document of what is looked at. */
export interface MarkedPicture {
  readonly design: Design
  readonly posture: Posture
  readonly sheet: FingerSheet
  readonly row: readonly string[]
}

/** A drawing of the size of the sheet; none for what stands nowhere in it. */
export function drawMarked({ design, posture, sheet, row }: MarkedPicture): Shape | undefined {
  const { points, parts } = standingPlaces({ design, posture }, row)
  if (points.length + parts.length === 0) return undefined
  const rings = points.map((point) => {
    const { x, y } = onSheet(sheet.view, point)
    return element('circle', { cx: x, cy: y, r: RING_PX, class: 'looked-at' })
  })
  const outlines = parts.map((part) => {
    const places = outlineOf(design.parts[part]).map((point) => onSheet(sheet.view, inMount(posture, part, point)))
    return element('path', { d: pathThrough(places, true), class: 'looked-at' })
  })
  const attributes = {
    class: 'drawing',
    viewBox: `0 0 ${px(sheet.width)} ${px(sheet.height)}`,
    width: sheet.width,
    height: sheet.height,
    'aria-hidden': 'true',
    xmlns: 'http://www.w3.org/2000/svg',
  }
  return element('svg', attributes, rings, outlines)
}
