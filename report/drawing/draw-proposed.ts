/** What a design has more than the one that is drawn, dashed over it: what an addition would look like before it is done. */
import type { Design, Point, Posture } from '../../engine/index.ts'
import { arrow } from './arrows.ts'
import { proposedMarks } from './draw-proposed-marks.ts'
import type { FingerSheet } from './layout-finger.ts'
import { outlineOf } from './outline.ts'
import { drawPads, drawPins, drawSprings, drawStops } from './pins.ts'
import { element, pathThrough, px, type Shape } from './svg.ts'
import { inMount, onSheet } from './view.ts'

const ARROW_PX = 46

/** The design as drawn at a posture on its sheet, and the one that has something more. */
export interface ProposedPicture {
  readonly design: Design
  readonly posture: Posture
  readonly sheet: FingerSheet
  readonly proposed: Design
}

/** A drawing of the size of the sheet. New parts stand where they are drawn in the document, new links between their pins. */
export function drawProposed(picture: ProposedPicture): Shape {
  const { design, sheet, proposed } = picture
  const posture = proposedPosture(picture)
  const scene = { design: proposed, posture, view: sheet.view }
  const newParts = proposed.parts.flatMap((part, index) => (has(design.parts, part.id) ? [] : [index]))
  const outlines = newParts.map((part) => {
    const places = outlineOf(proposed.parts[part]).map((point) => onSheet(sheet.view, inMount(posture, part, point)))
    return element('path', { d: pathThrough(places, true) })
  })
  const pins = proposed.pins.filter((pin) => !has(design.pins, pin.id))
  const pinsAt = posture.pinsAt.filter((_, index) => pins.includes(proposed.pins[index]))
  const content = [
    outlines,
    drawPins({ ...scene, design: { ...proposed, pins }, posture: { ...posture, pinsAt } }),
    drawStops({ ...scene, design: { ...proposed, stops: proposed.stops.filter(({ id }) => !has(design.stops, id)) } }),
    drawSprings({ ...scene, design: { ...proposed, springs: proposed.springs.filter(({ id }) => !has(design.springs, id)) } }),
    drawPads({ ...scene, design: { ...proposed, parts: withNewPads(design, proposed) } }),
    newHoles(picture, posture),
    newLoads(picture, posture),
    proposedMarks({ design, proposed, posture, view: sheet.view }),
  ]
  const attributes = {
    class: 'drawing proposed',
    viewBox: `0 0 ${px(sheet.width)} ${px(sheet.height)}`,
    width: sheet.width,
    height: sheet.height,
    'aria-hidden': 'true',
    xmlns: 'http://www.w3.org/2000/svg',
  }
  return element('svg', attributes, ...content)
}

function has(things: readonly { readonly id: string }[], id: string): boolean {
  return things.some((thing) => thing.id === id)
}

/** Parts that are there stand as they do; new ones as drawn; new links from pin to pin. */
function proposedPosture({ design, posture, proposed }: ProposedPicture): Posture {
  const poses = new Float64Array(3 * proposed.parts.length)
  proposed.parts.forEach((part, index) => {
    const known = design.parts.findIndex(({ id }) => id === part.id)
    if (known >= 0) poses.set(posture.poses.subarray(3 * known, 3 * known + 3), 3 * index)
    else if (part.drawn !== undefined) poses.set([part.drawn.at.x_mm, part.drawn.at.y_mm, part.drawn.turn_rad], 3 * index)
  })
  const placed: Posture = { ...posture, poses }
  proposed.parts.forEach((part, index) => {
    if (!has(design.parts, part.id) && part.drawn === undefined) poses.set(linkPose(proposed, placed, index), 3 * index)
  })
  return { ...placed, pinsAt: proposed.pins.map((_, pin) => centreOf(proposed, placed, pin)) }
}

/** Centre of a pin by the hole of the first part that stands. */
function centreOf({ pins, parts }: Design, posture: Posture, pin: number): Point {
  const { part, hole } = pins[pin].joins[0]
  return inMount(posture, part, parts[part].holes[hole].at)
}

function linkPose({ pins, parts }: Design, posture: Posture, link: number): readonly [number, number, number] {
  const [near, far] = parts[link].holes.slice(0, 2).map((_, own) => {
    const pin = pins.find(({ joins }) => joins.some(({ part, hole }) => part === link && hole === own))
    const other = pin?.joins.find(({ part }) => part !== link)
    return other === undefined ? undefined : inMount(posture, other.part, parts[other.part].holes[other.hole].at)
  })
  if (near === undefined || far === undefined) return [0, 0, 0]
  return [near.x_mm, near.y_mm, Math.atan2(far.y_mm - near.y_mm, far.x_mm - near.x_mm)]
}

function withNewPads(design: Design, proposed: Design): Design['parts'] {
  return proposed.parts.map((part) => {
    const known = design.parts.find(({ id }) => id === part.id)
    return { ...part, pads: part.pads.filter(({ id }) => !has(known?.pads ?? [], id)) }
  })
}

function newHoles({ design, sheet, proposed }: ProposedPicture, posture: Posture): readonly Shape[] {
  return proposed.parts
    .flatMap((part, index) => {
      const known = design.parts.find(({ id }) => id === part.id)
      return part.holes.filter(({ id }) => !has(known?.holes ?? [], id)).map((hole) => ({ hole, index }))
    })
    .map(({ hole, index }) => {
      const { x, y } = onSheet(sheet.view, inMount(posture, index, hole.at))
      return element('circle', { cx: x, cy: y, r: (hole.diameter_mm / 2) * sheet.view.scale_px_mm })
    })
}

function newLoads({ design, sheet, proposed }: ProposedPicture, posture: Posture): readonly Shape[] {
  return proposed.loadCases
    .filter(({ id }) => !has(design.loadCases, id))
    .flatMap(({ forces }) => forces)
    .flatMap(({ part, pad, direction_rad, frame }) => {
      const to = onSheet(sheet.view, inMount(posture, part, proposed.parts[part].pads[pad].at))
      const angle = direction_rad + posture.poses[3 * frame + 2]
      const from = { x: to.x - ARROW_PX * Math.cos(angle), y: to.y + ARROW_PX * Math.sin(angle) }
      return arrow(from, to, 'force load')
    })
}
