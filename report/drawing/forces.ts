/** Forces of a picture as arrows: loads end at their pad, stop forces at the contact, link forces lie along their line of action. */
import type { ForcePicture, Point, Port, Vector } from '../../engine/index.ts'
import { say } from '../tables/value-text.ts'
import { arcArrow, arrow } from './arrows.ts'
import type { DrawnForces, ForcesOnSheet } from './forces-on-sheet.ts'
import { boxesAlong, type Label } from './labels.ts'
import { drawSidePushes } from './side-pushes.ts'
import { line, type Place, type Shape } from './svg.ts'
import { inMount, onSheet } from './view.ts'

const LONGEST_PX = 56
const SHORTEST_PX = 22
const LABEL_PX = 12.5
const COUPLE_RADIUS_PX = 30
/** The line of a link's force is drawn this far beyond its pins. */
const BEYOND_PX = 34

/** A force below this share of the largest is rounding, and is not drawn. */
const SMALLEST_RATIO = 1e-6
/** A force below this is nothing a workshop could measure, N. */
const SMALLEST_N = 1e-3

interface Arrow {
  readonly from: Place
  readonly to: Place
  readonly words: string
  readonly className: string
}

/** Loads, stop forces, link forces and the effort. A picture without equilibrium shows its loads only. */
export function drawForces(about: ForcesOnSheet): DrawnForces {
  const { forces } = about
  const largest = Math.max(
    1e-9,
    ...forces.loads.map((load) => sizeOf(load.force_N)),
    ...forces.stops.map((stop) => sizeOf(stop.force_N)),
  )
  const loads = forces.loads.map((load) => arrowFor(about, { at: load.at, force_N: load.force_N, largest, className: 'load' }))
  const stops = forces.stops
    .filter((stop) => sizeOf(stop.force_N) > SMALLEST_RATIO * largest)
    .map((stop) => stopArrow(about, stop, largest))
  const links = forces.linkLines.flatMap((_, index) => linkArrows(about, index))
  const arrows = [...loads, ...stops, ...links]
  const effort = drawEffort(about)
  const side = drawSidePushes(about)
  return {
    shapes: [
      ...linkLines(about),
      ...arrows.flatMap(({ from, to, className }) => arrow(from, to, `force ${className}`)),
      ...effort.shapes,
      ...side.shapes,
    ],
    labels: [...arrows.filter(({ words }) => words !== '').map(labelOf), ...effort.labels, ...side.labels],
    obstacles: [...arrows.flatMap(({ from, to }) => boxesAlong(from, to, 4)), ...effort.obstacles, ...side.obstacles],
  }
}

/** Beside the force of a stop stands the largest that friction at rest may leave on it. */
function stopArrow(about: ForcesOnSheet, { at, force_N, most_N }: ForcePicture['stops'][number], largest: number): Arrow {
  const drawn = arrowFor(about, { at, force_N, largest, className: 'reaction' })
  if (most_N === undefined) return drawn
  return { ...drawn, words: `${drawn.words}, at most ${say(most_N, 'N', about.units)}` }
}

function arrowFor(
  { view, units }: ForcesOnSheet,
  force: { at: Point; force_N: Vector; largest: number; className: string },
): Arrow {
  const size = sizeOf(force.force_N)
  const length = Math.max(SHORTEST_PX, (LONGEST_PX * size) / force.largest)
  const to = onSheet(view, force.at)
  const from = { x: to.x - (length * force.force_N.x) / size, y: to.y + (length * force.force_N.y) / size }
  return { from, to, words: say(size, 'N', units), className: force.className }
}

function labelOf({ from, to, words, className }: Arrow): Label {
  const prefers_rad = Math.atan2(from.y - to.y, from.x - to.x)
  return { words, anchor: from, clear_px: 4, prefers_rad, className: `value ${className}`, size_px: LABEL_PX }
}

/** Two arrows on the line of a link's force: towards each other for a link that is pushed together, apart for one that is pulled. */
function linkArrows(about: ForcesOnSheet, index: number): readonly Arrow[] {
  const ends = linkEnds(about, index)
  if (ends === undefined) return []
  const { tension_N } = about.forces.linkLines[index]
  const state = tension_N > 0 ? 'pulled' : 'pushed'
  return ends.map(({ at, outward }, end) => {
    const far = { x: at.x + BEYOND_PX * outward.x, y: at.y + BEYOND_PX * outward.y }
    const near = { x: at.x + 8 * outward.x, y: at.y + 8 * outward.y }
    const words = end === 0 ? `${say(Math.abs(tension_N), 'N', about.units)} ${state}` : ''
    return tension_N > 0 ? { from: near, to: far, words, className: 'link' } : { from: far, to: near, words, className: 'link' }
  })
}

function linkLines(about: ForcesOnSheet): readonly Shape[] {
  return about.forces.linkLines
    .map((_, index) => linkEnds(about, index))
    .flatMap((ends) => (ends === undefined ? [] : [line(ends[0].at, ends[1].at, 'action')]))
}

/** Feet of the link's two pins on the line of its force, with the direction outwards from the link; none for a link without force. */
function linkEnds({ design, forces, view }: ForcesOnSheet, index: number) {
  const { part, through, direction_rad, tension_N } = forces.linkLines[index]
  const pins = design.pins.flatMap((pin, pinIndex) => (pin.joins.some((join) => join.part === part) ? [pinIndex] : []))
  if (pins.length !== 2 || design.parts[part].role !== 'link' || Math.abs(tension_N) < SMALLEST_N) return undefined
  const along = { x: Math.cos(direction_rad), y: Math.sin(direction_rad) }
  const feet = pins.map((pin) => {
    const at = forces.posture.pinsAt[pin]
    const reach = (at.x_mm - through.x_mm) * along.x + (at.y_mm - through.y_mm) * along.y
    return { reach, at: onSheet(view, { x_mm: through.x_mm + reach * along.x, y_mm: through.y_mm + reach * along.y }) }
  })
  const sense = Math.sign(feet[1].reach - feet[0].reach)
  return [
    { at: feet[0].at, outward: { x: -sense * along.x, y: sense * along.y } },
    { at: feet[1].at, outward: { x: sense * along.x, y: -sense * along.y } },
  ] as const
}

const NOTHING: DrawnForces = { shapes: [], labels: [], obstacles: [] }

/**
 * The effort where it acts: an arc about the drive's pin or about the part a couple acts on, an arrow at a pad. What the stop carries is drawn
 * at the stop, and nobody else gives it.
 */
function drawEffort(about: ForcesOnSheet): DrawnForces {
  const { effort } = about.forces
  const port = portOf(about)
  const isAtStop = about.forces.stops.length > 0
  if (effort === undefined || port === undefined || isAtStop || Math.abs(effort.value) < SMALLEST_N) return NOTHING
  if (port.kind === 'force') return drawKeeper(about, { port, value: effort.value })
  const centre = centreOf(about, port)
  return centre === undefined
    ? NOTHING
    : drawCouple(onSheet(about.view, centre), {
        value: effort.value,
        words: say(Math.abs(effort.value), effort.unit, about.units),
      })
}

/** The port at which a question asks for the effort; the return asks for drag at every pin, which is no place. */
function portOf({ design, question }: ForcesOnSheet): Port | undefined {
  if (question === undefined || question.kind === 'return') return undefined
  const keeper = design.loadCases.find((loadCase) => loadCase.id === question.loadCase)?.keeper
  return question.kind === 'hold' && keeper !== undefined ? keeper.port : { kind: 'drive' }
}

/** Where a couple is drawn: at the pin of a turned drive, or at the first pin of the part that it acts on. */
function centreOf({ design, forces }: ForcesOnSheet, port: Exclude<Port, { kind: 'force' }>): Point | undefined {
  if (port.kind === 'drive') return design.drive.kind === 'turn' ? forces.posture.pinsAt[design.drive.pin] : undefined
  const pin = design.pins.findIndex((candidate) => candidate.joins.some((join) => join.part === port.part))
  return pin < 0 ? undefined : forces.posture.pinsAt[pin]
}

function drawCouple(centre: Place, couple: { readonly value: number; readonly words: string }): DrawnForces {
  const flexing = couple.value > 0
  const [from_rad, to_rad] = flexing ? [-2.3, -0.5] : [-0.5, -2.3]
  const top = { x: centre.x, y: centre.y - COUPLE_RADIUS_PX }
  const label = {
    anchor: top,
    clear_px: 6,
    prefers_rad: -Math.PI / 2,
    className: 'value effort',
    size_px: LABEL_PX,
    words: couple.words,
  }
  const shapes = arcArrow({ centre, radius: COUPLE_RADIUS_PX, from_rad, to_rad }, 'force effort')
  return { shapes, labels: [label], obstacles: boxesAlong(top, top, 8) }
}

function drawKeeper(about: ForcesOnSheet, keeper: { port: Extract<Port, { kind: 'force' }>; value: number }): DrawnForces {
  const { part, pad, direction_rad, frame } = keeper.port
  const { design, forces } = about
  const { posture } = forces
  const turned = direction_rad + posture.poses[3 * frame + 2]
  const force_N = { x: keeper.value * Math.cos(turned), y: keeper.value * Math.sin(turned) }
  const at = inMount(posture, part, design.parts[part].pads[pad].at)
  const shown = arrowFor(about, { at, force_N, largest: Math.abs(keeper.value), className: 'effort' })
  const label = labelOf({ ...shown, words: `${shown.words} keeper` })
  return { shapes: arrow(shown.from, shown.to, 'force effort'), labels: [label], obstacles: boxesAlong(shown.from, shown.to, 4) }
}

function sizeOf(force: Vector): number {
  return Math.hypot(force.x, force.y)
}
