/** What a proposed design has more that is no body of its own: places of a rack, masked faces, screws, grease. */
import { type Design, isMasked, type Part, type Point, type Posture } from '../../engine/index.ts'
import { element, pathThrough, type Shape } from './svg.ts'
import { inMount, onSheet, type View } from './view.ts'

/** The design that is there, the one that has something more, and where its parts stand on a sheet. */
export interface ProposedMarks {
  readonly design: Design
  readonly proposed: Design
  readonly posture: Posture
  readonly view: View
}

const RACK_PX = 4
/** From the rim of a masked hole to its ring. */
const RING_PX = 3
const GREASE_PX = 12
const SCREW_PX = 22

/** Rings, dots and lines of what is new. */
export function proposedMarks(about: ProposedMarks): readonly Shape[] {
  const { design, proposed } = about
  const ofParts = proposed.parts.flatMap((part, index) => {
    const known = design.parts.find(({ id }) => id === part.id)
    return known === undefined ? [] : [...newRacks(about, { part, known, index }), ...newMasks(about, { part, known, index })]
  })
  return [...ofParts, ...newScrews(about), ...newGrease(about)]
}

interface PartBoth {
  readonly part: Part
  readonly known: Part
  readonly index: number
}

function newRacks({ posture, view }: ProposedMarks, { part, known, index }: PartBoth): readonly Shape[] {
  return (part.racks ?? []).slice(known.racks?.length ?? 0).map((at) => ring(onSheet(view, inMount(posture, index, at)), RACK_PX))
}

/** A ring about a hole, the edge or the outline once more; flat sides and threads have nothing to be drawn by here. */
function newMasks({ posture, view }: ProposedMarks, { part, known, index }: PartBoth): readonly Shape[] {
  const place = (at: Point) => onSheet(view, inMount(posture, index, at))
  const isNew = (face: Parameters<typeof isMasked>[1]): boolean => isMasked(part, face) && !isMasked(known, face)
  const holes = part.holes.flatMap(({ id, at, diameter_mm }) =>
    isNew(`holes.${id}`) ? [ring(place(at), (diameter_mm / 2) * view.scale_px_mm + RING_PX)] : [],
  )
  const edges = part.edges.flatMap((edge) =>
    edge.kind === 'straight' && isNew(`edges.${edge.id}`)
      ? [element('path', { d: pathThrough([edge.from, edge.to].map(place), false) })]
      : [],
  )
  const around = isNew('outline') ? [element('path', { d: pathThrough(part.outline.map(place), true) })] : []
  return [...holes, ...edges, ...around]
}

/** Where a screw holds the mount, a line the way it goes in. */
function newScrews({ design, proposed, view }: ProposedMarks): readonly Shape[] {
  const old = new Set((design.screws ?? []).map(({ id }) => id))
  return (proposed.screws ?? []).flatMap(({ id, holdsMount }) => {
    if (old.has(id) || holdsMount === undefined) return []
    const to = onSheet(view, holdsMount.at)
    const [x, y] = [SCREW_PX * Math.cos(holdsMount.pulls_rad), -SCREW_PX * Math.sin(holdsMount.pulls_rad)]
    return [element('path', { d: pathThrough([{ x: to.x + x, y: to.y + y }, to], false) })]
  })
}

function newGrease({ design, proposed, posture, view }: ProposedMarks): readonly Shape[] {
  const old = new Set((design.grease ?? []).map(({ id }) => id))
  const pins = (proposed.grease ?? []).flatMap((point) => {
    if (old.has(point.id)) return []
    const coils = point.springs.flatMap((index) => {
      const spring = proposed.springs[index]
      return spring.kind === 'torsion' ? [spring.pin] : []
    })
    return [...point.pins, ...coils]
  })
  return pins.map((pin) => ring(onSheet(view, posture.pinsAt[pin]), GREASE_PX))
}

function ring({ x, y }: { readonly x: number; readonly y: number }, r: number): Shape {
  return element('circle', { cx: x, cy: y, r })
}
