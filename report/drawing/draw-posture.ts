/** One sheet: the finger at a posture with its forces, and the toggle as a detail beside it. */
import type { Design, ForcePicture, Posture, Question, Travel, UnitSystem } from '../../engine/index.ts'
import { drawForces } from './forces.ts'
import { boxAt, drawLabel, type Label, placeLabels } from './labels.ts'
import type { FingerSheet } from './layout-finger.ts'
import { drawOverlaps, drawParts, drawPhantom } from './parts.ts'
import { drawPads, drawPins, drawSprings, drawStops, drawTipPath } from './pins.ts'
import { element, type Place, px, type Shape } from './svg.ts'
import { detailArea, drawDetail } from './toggle-detail.ts'
import { onSheet } from './view.ts'

/** What is drawn: a posture of a travel, with or without forces. */
export interface PosturePicture {
  readonly design: Design
  readonly travel: Travel
  readonly posture: Posture
  readonly forces?: ForcePicture
  /** What the forces were asked for; it tells where the effort acts. */
  readonly question?: Question
  /** Units of the reader; metric when absent. */
  readonly units?: UnitSystem
  /** Which toggle the detail shows; the first when absent. */
  readonly toggle?: number
}

/** How it is drawn. */
export interface SheetOptions {
  /** Where things stand; the same sheet for every posture keeps the drawing still. */
  readonly sheet: FingerSheet
  /** Makes ids unique where several drawings share a page. */
  readonly idPrefix: string
  /** Read by those who cannot see the drawing. */
  readonly title: string
}

/** A drawing with what a page needs to lay handles over it. */
export interface FingerDrawing {
  readonly svg: Shape
  readonly width: number
  readonly height: number
  readonly scale_px_mm: number
  /** Centre of each pin on the sheet, px. */
  readonly pins: readonly Place[]
}

/** Draws a posture on a sheet that `layoutSheet` laid out. */
export function drawPosture(picture: PosturePicture, options: SheetOptions): FingerDrawing {
  const { sheet } = options
  const content = [
    mainView(picture, { sheet, idPrefix: options.idPrefix }),
    detailView(picture, { sheet, idPrefix: options.idPrefix }),
  ]
  const attributes = {
    class: 'drawing finger-drawing',
    viewBox: `0 0 ${px(sheet.width)} ${px(sheet.height)}`,
    width: sheet.width,
    height: sheet.height,
    role: 'img',
    'aria-label': options.title,
    xmlns: 'http://www.w3.org/2000/svg',
  }
  const pins = picture.posture.pinsAt.map((at) => onSheet(sheet.view, at))
  return {
    svg: element('svg', attributes, ...content),
    width: sheet.width,
    height: sheet.height,
    scale_px_mm: sheet.view.scale_px_mm,
    pins,
  }
}

function mainView(picture: PosturePicture, { sheet, idPrefix }: { sheet: FingerSheet; idPrefix: string }): readonly Shape[] {
  const { design, travel, posture, forces, question, units = 'metric' } = picture
  const view = sheet.view
  const marks = { design, posture, view }
  const drawnForces =
    forces === undefined
      ? { shapes: [], labels: [], obstacles: [] }
      : drawForces({ design, forces, view, units, ...(question === undefined ? {} : { question }) })
  const pins = posture.pinsAt.map((at) => onSheet(view, at))
  const ring = ringOf(picture, sheet)
  const names = design.pins.map((pin, index) => pinName(pin.id, pins, index))
  const labels = placeLabels([...drawnForces.labels, ...names, ...ring.labels], {
    sheet: { left: 2, top: 2, width: sheet.width - 4, height: sheet.height - 4 },
    obstacles: [...pins.map((pin) => boxAt(pin, 9)), ...drawnForces.obstacles],
  })
  return [
    drawPhantom({ design, posture: travel.postures[0], view, idPrefix }),
    drawTipPath(marks, travel),
    drawParts({ design, posture, view, idPrefix }),
    drawOverlaps(
      { design, posture, view, idPrefix },
      travel.overlaps.map(({ parts }) => parts),
    ),
    drawSprings(marks),
    drawStops(marks),
    drawPins(marks),
    drawPads(marks),
    ring.shapes,
    drawnForces.shapes,
    labels.flatMap(drawLabel),
  ].flat()
}

/** Names stand away from the middle of the finger, where there is paper. */
function pinName(id: string, pins: readonly Place[], index: number): Label {
  const middle = { x: mean(pins.map((pin) => pin.x)), y: mean(pins.map((pin) => pin.y)) }
  const anchor = pins[index]
  const prefers_rad = Math.atan2(anchor.y - middle.y, anchor.x - middle.x)
  return { words: id, anchor, clear_px: 17, prefers_rad, className: 'name', size_px: 12.5 }
}

function ringOf(
  { design, posture, toggle = 0 }: PosturePicture,
  sheet: FingerSheet,
): { shapes: readonly Shape[]; labels: readonly Label[] } {
  if (sheet.detail === undefined) return { shapes: [], labels: [] }
  const { at, radius_mm } = detailArea({ design, posture, toggle })
  const centre = onSheet(sheet.view, at)
  const radius = radius_mm * sheet.view.scale_px_mm
  const label = { words: 'Z', anchor: centre, clear_px: radius + 3, prefers_rad: Math.PI / 3, className: 'value', size_px: 14 }
  return { shapes: [element('circle', { cx: centre.x, cy: centre.y, r: radius, class: 'ring' })], labels: [label] }
}

function detailView(picture: PosturePicture, { sheet, idPrefix }: { sheet: FingerSheet; idPrefix: string }): readonly Shape[] {
  if (sheet.detail === undefined) return []
  const { design, posture, forces, toggle = 0, units = 'metric' } = picture
  const place = { ...sheet.detail, mainScale_px_mm: sheet.view.scale_px_mm, idPrefix, toggle, units }
  return drawDetail({ design, posture, ...place, ...(forces === undefined ? {} : { forces }) })
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / Math.max(values.length, 1)
}
