/** Faces that a coater keeps bare, as they are drawn: a wide line of long dashes and dots beside each, on the side of the air. */
import { type FaceName, isMasked, type Point, type Screw } from '../../engine/index.ts'
import { type At, type Ink, stroke } from './ink.ts'
import { besideLine, edgeLines, middleOfEdge, onPaper, type Placing, rimLines } from './part-views.ts'
import type { Threaded } from './thread-views.ts'

/** Said on a sheet that shows such a line. */
export const maskedLegend = 'A wide line of long dashes and dots stands beside what is masked.'

/** From the face to its line on the paper. */
const AWAY = 1.1

/** The lines beside holes, stop edges, the outline and the mouths of threads that are masked. */
export function maskedLines({ part, screws }: Threaded, placing: Placing): readonly Ink[] {
  const beside = { around: AWAY, type: 'apart' } as const
  const masked = (face: FaceName): boolean => isMasked(part, face)
  return [
    ...part.holes.flatMap((hole) => (masked(`holes.${hole.id}`) ? rimLines(hole, placing, beside) : [])),
    ...part.edges.flatMap((edge) => (masked(`edges.${edge.id}`) ? edgeLines(edge, placing, beside) : [])),
    ...(masked('outline') ? aroundOutline(part.outline, placing) : []),
    ...screws.flatMap((screw) => (masked(`threads.${screw.id}`) ? mouthLine(screw, placing) : [])),
  ]
}

function aroundOutline(outline: readonly Point[], placing: Placing): readonly Ink[] {
  const corners = outline.map((corner) => onPaper(placing, corner))
  const next = (index: number): At => corners[(index + 1) % corners.length]
  const twice = corners.reduce((sum, { x, y }, index) => sum + x * next(index).y - next(index).x * y, 0)
  // On paper y runs down: corners that run as a clock does have the metal to their right.
  const aside = twice > 0 ? AWAY : -AWAY
  return corners.map((corner, index) => {
    const [from, to] = besideLine([corner, next(index)], aside)
    return stroke(from, to, 'apart')
  })
}

/** Across the mouth, where the head of the screw is pulled to. */
function mouthLine({ holdsMount, thread }: Screw, placing: Placing): readonly Ink[] {
  if (holdsMount === undefined) return []
  const middle = onPaper(placing, holdsMount.at)
  const half = (placing.ratio * thread.diameter_mm) / 2
  const [x, y] = [Math.cos(holdsMount.pulls_rad), -Math.sin(holdsMount.pulls_rad)]
  const end = (by: number): At => ({ x: middle.x + AWAY * x - by * y, y: middle.y + AWAY * y + by * x })
  return [stroke(end(-half), end(half), 'apart')]
}

/** What is written beside a place of the part. */
export interface NamedPlace {
  readonly at: Point
  readonly words: string
}

/** How holes are called on a sheet: by their ids, or by letters where these are too long. */
export type HoleName = (id: string, row: number) => string

/** Holes, stop edges, and threads whose place is known. @param holeName what a hole is called beside it, by its id and its row of the table */
export function namedPlaces({ part, screws }: Threaded, holeName: HoleName): readonly NamedPlace[] {
  const threads = screws.flatMap(({ id, holdsMount }) =>
    holdsMount ? [{ id, at: holdsMount.at, face: `threads.${id}` } as const] : [],
  )
  const places = [
    ...part.holes.map(({ id, at }, row) => ({ id: holeName(id, row), at, face: `holes.${id}` }) as const),
    ...part.edges.map((edge) => ({ id: edge.id, at: middleOfEdge(edge), face: `edges.${edge.id}` }) as const),
    ...threads.map(({ id, ...rest }) => ({ id: `thread ${id}`, ...rest })),
  ]
  return places.map(({ id, at, face }) => ({ at, words: isMasked(part, face) ? `${id}, masked` : id }))
}

/** What is said of the flat sides; none where neither is masked. */
export function sideWords({ part }: Threaded): string | undefined {
  const words = [
    ...(isMasked(part, 'faces.front') ? ['this face is masked'] : []),
    ...(isMasked(part, 'faces.back') ? ['the face behind is masked'] : []),
  ]
  return words.length === 0 ? undefined : words.join(', ')
}
