/**
 * Two fingers over each other on one sheet, told apart by line type alone: the earlier in dashed lines, the later in full ones. They share
 * the frame of the mount. Where a line of both lies in the same place the full one covers the dashed one, so that what is dashed is what
 * has changed.
 */
import { type Design, type Posture, postureAt, type Travel } from '../../engine/index.ts'
import { travelEnd } from '../plots/travel-axis.ts'
import type { Told } from '../tables/told.ts'
import { boxAt, drawLabel, type Label, placeLabels } from './labels.ts'
import type { FingerSheet } from './layout-finger.ts'
import { outlineOf } from './outline.ts'
import { drawPads, drawPins, drawSprings, drawStops } from './pins.ts'
import { element, lettering, line, pathThrough, px, type Shape } from './svg.ts'
import { inMount, onSheet, type View } from './view.ts'

const KEY_LINE_PX = 52
const KEY_ROW_PX = 20
const KEY_SIZE_PX = 13.5

/** One of the two fingers, and what it is called. */
export interface ComparedFinger {
  readonly words: string
  readonly evaluation: Told
}

/** The two fingers; one without a travel is left out, because it stands nowhere. */
export interface ComparedFingers {
  readonly before: ComparedFinger
  readonly after: ComparedFinger
}

/** Where they are looked at. */
export interface ComparedOptions {
  readonly sheet: FingerSheet
  /** Share of the travel of each, 0 open to 1 closed. */
  readonly arc_ratio: number
}

/** A drawing of the size of a sheet that `layoutCompared` laid out. */
export function drawCompared({ before, after }: ComparedFingers, { sheet, arc_ratio }: ComparedOptions): Shape {
  const { view, width, height } = sheet
  const [earlier, later] = [standing(before, arc_ratio), standing(after, arc_ratio)]
  const title = `Over each other at ${Math.round(arc_ratio * 100)} % of the travel: dashed ${before.words}, full ${after.words}`
  const attributes = {
    class: 'drawing compared-drawing',
    viewBox: `0 0 ${px(width)} ${px(height)}`,
    width,
    height,
    role: 'img',
    'aria-label': title,
    xmlns: 'http://www.w3.org/2000/svg',
  }
  const content = [
    later === undefined ? [] : element('g', { class: 'metal-only' }, drawOutlines(later, view)),
    earlier === undefined ? [] : element('g', { class: 'earlier' }, drawLines(earlier, view)),
    later === undefined ? [] : element('g', { class: 'later' }, drawLines(later, view)),
    drawNames([later, earlier], sheet),
    drawKey([after.words, before.words], sheet),
  ]
  return element('svg', attributes, ...content)
}

interface Standing {
  readonly design: Design
  readonly posture: Posture
}

function standing({ evaluation }: ComparedFinger, arc_ratio: number): Standing | undefined {
  const travel: Travel | undefined = evaluation.travel
  if (travel === undefined) return undefined
  return { design: evaluation.design, posture: postureAt(evaluation, Math.min(arc_ratio, travelEnd(travel))) }
}

function drawOutlines({ design, posture }: Standing, view: View): readonly Shape[] {
  return design.parts.map((part, index) => {
    const places = outlineOf(part).map((point) => onSheet(view, inMount(posture, index, point)))
    return element('path', { d: pathThrough(places, true), class: 'part' })
  })
}

function drawLines(finger: Standing, view: View): readonly Shape[] {
  const marks = { ...finger, view }
  return [drawOutlines(finger, view), drawSprings(marks), drawStops(marks), drawPins(marks), drawPads(marks)].flat()
}

/** Every pin is named once, where it stands in the later finger if it is there. */
function drawNames(fingers: readonly (Standing | undefined)[], { view, width, height }: FingerSheet): readonly Shape[] {
  const named = new Map<string, Label>()
  const places = fingers.flatMap((finger) => finger?.posture.pinsAt.map((at) => onSheet(view, at)) ?? [])
  for (const { design, posture } of fingers.filter((finger) => finger !== undefined)) {
    design.pins.forEach(({ id }, index) => {
      const anchor = onSheet(view, posture.pinsAt[index])
      const label = { words: id, anchor, clear_px: 17, prefers_rad: -Math.PI / 2, className: 'name', size_px: 12.5 }
      if (!named.has(id)) named.set(id, label)
    })
  }
  const ground = { sheet: { left: 2, top: 2, width: width - 4, height: height - 4 }, obstacles: places.map((at) => boxAt(at, 9)) }
  return placeLabels([...named.values()], ground).flatMap(drawLabel)
}

/** The full line and the dashed one with what each stands for. */
function drawKey(words: readonly [string, string], { height }: FingerSheet): readonly Shape[] {
  return words.flatMap((name, row) => {
    const y = height - 30 + row * KEY_ROW_PX
    const sample = line({ x: 2, y }, { x: 2 + KEY_LINE_PX, y }, 'part')
    const said = lettering(name, { x: KEY_LINE_PX + 12, y: y + 0.35 * KEY_SIZE_PX }, { class: 'key', 'font-size': KEY_SIZE_PX })
    return [element('g', { class: row === 0 ? 'later' : 'earlier' }, sample), said]
  })
}
