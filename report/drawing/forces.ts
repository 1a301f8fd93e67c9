/** Forces of a picture as arrows: loads end at their pad, stop forces at the contact, link forces lie along their line of action. */
import type { Design, ForcePicture, Point, Vector } from '../../engine/index.ts'
import { say } from '../tables/value-text.ts'
import { arcArrow, arrow } from './arrows.ts'
import { boxesAlong, type Label, type Rectangle } from './labels.ts'
import { line, type Place } from './svg.ts'
import { onSheet, type View } from './view.ts'

const LONGEST_PX = 64
const SHORTEST_PX = 22
const LABEL_PX = 12.5
/** The line of a link's force is drawn this far beyond its pins. */
const BEYOND_PX = 34

/** Drawn forces with the labels that belong to them and the places they take. */
export interface DrawnForces {
  readonly svg: string
  readonly labels: readonly Label[]
  readonly obstacles: readonly Rectangle[]
}

interface Arrow {
  readonly from: Place
  readonly to: Place
  readonly words: string
  readonly className: string
}

/** Loads, stop forces, link forces and the effort. A picture without equilibrium shows its loads only. */
export function drawForces(about: { design: Design; forces: ForcePicture; view: View }): DrawnForces {
  const { forces } = about
  const largest = Math.max(
    1e-9,
    ...forces.loads.map((load) => sizeOf(load.force_N)),
    ...forces.stops.map((stop) => sizeOf(stop.force_N)),
  )
  const loads = forces.loads.map((load) =>
    arrowFor(about.view, { at: load.at, force_N: load.force_N, largest, className: 'load' }),
  )
  const stops = forces.stops
    .filter((stop) => sizeOf(stop.force_N) > 1e-6 * largest)
    .map((stop) => arrowFor(about.view, { at: stop.at, force_N: stop.force_N, largest, className: 'reaction' }))
  const links = forces.linkLines.flatMap((_, index) => linkArrows(about, index))
  const arrows = [...loads, ...stops, ...links]
  const effort = drawEffort(about)
  return {
    svg: linkLines(about) + arrows.map(({ from, to, className }) => arrow(from, to, `force ${className}`)).join('') + effort.svg,
    labels: [...arrows.filter(({ words }) => words !== '').map(labelOf), ...effort.labels],
    obstacles: [...arrows.flatMap(({ from, to }) => boxesAlong(from, to, 4)), ...effort.obstacles],
  }
}

function arrowFor(view: View, force: { at: Point; force_N: Vector; largest: number; className: string }): Arrow {
  const size = sizeOf(force.force_N)
  const length = Math.max(SHORTEST_PX, (LONGEST_PX * size) / force.largest)
  const to = onSheet(view, force.at)
  const from = { x: to.x - (length * force.force_N.x) / size, y: to.y + (length * force.force_N.y) / size }
  return { from, to, words: say(size, 'N'), className: force.className }
}

function labelOf({ from, to, words, className }: Arrow): Label {
  const prefers_rad = Math.atan2(from.y - to.y, from.x - to.x)
  return { words, anchor: from, clear_px: 4, prefers_rad, className: `value ${className}`, size_px: LABEL_PX }
}

/** Two arrows on the line of a link's force: towards each other for a link that is pushed together, apart for one that is pulled. */
function linkArrows(
  { design, forces, view }: { design: Design; forces: ForcePicture; view: View },
  index: number,
): readonly Arrow[] {
  const ends = linkEnds({ design, forces, view }, index)
  const { tension_N } = forces.linkLines[index]
  if (ends === undefined || Math.abs(tension_N) < 1e-9) return []
  const state = tension_N > 0 ? 'pulled' : 'pushed'
  return ends.map(({ at, outward }, end) => {
    const far = { x: at.x + BEYOND_PX * outward.x, y: at.y + BEYOND_PX * outward.y }
    const near = { x: at.x + 8 * outward.x, y: at.y + 8 * outward.y }
    const words = end === 0 ? `${say(Math.abs(tension_N), 'N')} ${state}` : ''
    return tension_N > 0 ? { from: near, to: far, words, className: 'link' } : { from: far, to: near, words, className: 'link' }
  })
}

function linkLines(about: { design: Design; forces: ForcePicture; view: View }): string {
  return about.forces.linkLines
    .map((_, index) => {
      const ends = linkEnds(about, index)
      if (ends === undefined) return ''
      return line(ends[0].at, ends[1].at, 'action')
    })
    .join('')
}

/** Feet of the link's two pins on the line of its force, with the direction outwards from the link. */
function linkEnds({ design, forces, view }: { design: Design; forces: ForcePicture; view: View }, index: number) {
  const { part, through, direction_rad } = forces.linkLines[index]
  const pins = design.pins.flatMap((pin, pinIndex) => (pin.joins.some((join) => join.part === part) ? [pinIndex] : []))
  if (pins.length !== 2) return undefined
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

/** The effort as an arc about the drive's pin, or as a straight pull. Nothing where there is no equilibrium. */
function drawEffort({ design, forces, view }: { design: Design; forces: ForcePicture; view: View }): DrawnForces {
  const { effort } = forces
  const nothing = { svg: '', labels: [], obstacles: [] }
  if (effort === undefined || Math.abs(effort.value) < 1e-9 || design.drive.kind !== 'turn') return nothing
  if (effort.unit !== 'N·mm') return nothing
  const centre = onSheet(view, forces.posture.pinsAt[design.drive.pin])
  const flexing = effort.value > 0
  const [from_rad, to_rad] = flexing ? [-2.3, -0.5] : [-0.5, -2.3]
  const arc = { centre, radius: 30, from_rad, to_rad }
  const top = { x: centre.x, y: centre.y - 30 }
  const label = { anchor: top, clear_px: 6, prefers_rad: -Math.PI / 2, className: 'value effort', size_px: LABEL_PX }
  const words = say(Math.abs(effort.value), effort.unit)
  return { svg: arcArrow(arc, 'force effort'), labels: [{ ...label, words }], obstacles: boxesAlong(top, top, 8) }
}

function sizeOf(force: Vector): number {
  return Math.hypot(force.x, force.y)
}
