/** The two views of a part with all that is written about them: a block for each hole and edge above, or a table of them on the right. */
import type { DrawnPart, Part, Screw } from '../../engine/index.ts'
import { calloutSize, calloutsOf, calloutsWidth, drawCallouts } from './callouts.ts'
import { freeMark } from './corner-marks.ts'
import { faceDatum } from './face-datum.ts'
import { holeColumns, holeRows, rowLetter } from './hole-table.ts'
import type { At, Box, Ink } from './ink.ts'
import { faceDimensions, sideDimensions } from './part-dimensions.ts'
import { acrossOnPaper, faceView, onPaper, type Placing, type Projection, sideView, slicesOf } from './part-views.ts'
import { dimensionsBefore, dimensionsBelow, rowsRoom } from './stacked-dimensions.ts'
import { laidTable } from './table-ink.ts'
import { threadsOnFace, threadsOnSide } from './thread-views.ts'

/** Room for an arrow and its words beside a row of dimensions, and for lines from the blocks to the view. */
const BESIDE = 16
const LEADERS = 11
const BETWEEN_VIEWS = 14
const INSET = 4

/** A part with the screws that are turned into it, and from where it is seen. */
export interface ViewedPart {
  readonly drawn: DrawnPart
  readonly screws: readonly Screw[]
  readonly projection: Projection
}

/** Where the face stands, and everything drawn. */
export interface Views {
  readonly placing: Placing
  readonly ink: readonly Ink[]
}

/** Both views with their sizes, and a block for each hole and edge; undefined where the room is too small for them at this scale. */
export function viewsWithBlocks(asked: ViewedPart, room: Box, ratio: number): Views | undefined {
  const callouts = calloutsOf(asked.drawn)
  if (calloutsWidth(callouts) > room.right - room.left) return undefined
  const blocks = Math.max(0, ...callouts.map((callout) => calloutSize(callout).height))
  const views = laidViews(asked, room, { ratio, above: blocks + LEADERS + BESIDE / 2, sized: asked.drawn })
  if (views === undefined) return undefined
  const { placing } = views
  const drawn = drawCallouts(callouts, { left: room.left, right: room.right, bottom: views.top - LEADERS - BESIDE / 2, placing })
  return { placing, ink: [...views.ink, ...drawn] }
}

/** Both views with their outer sizes, a letter at each hole and edge, and a table of these on the right. */
export function viewsWithTable(asked: ViewedPart, room: Box, ratio: number): Views | undefined {
  const { drawn } = asked
  const table = laidTable(holeColumns, holeRows(drawn))
  const left = room.right - table.width
  if (table.height > room.bottom - room.top) return undefined
  const views = laidViews(asked, { ...room, right: left - INSET }, { ratio, above: BESIDE, sized: { ...drawn, holes: [] } })
  if (views === undefined) return undefined
  const ink = [...views.ink]
  for (const [index, { at }] of calloutsOf(drawn).entries()) {
    const mark = freeMark(rowLetter(index), onPaper(views.placing, at), ink)
    if (mark === undefined) return undefined
    ink.push(...mark)
  }
  return { placing: views.placing, ink: [...ink, ...table.inkAt({ x: left, y: room.top })] }
}

interface ViewsAsked {
  readonly ratio: number
  /** Room over the face. */
  readonly above: number
  /** What sizes are drawn of. */
  readonly sized: DrawnPart
}

/** Both views with their sizes; undefined where they have no room at this scale. */
function laidViews(
  { drawn, screws, projection }: ViewedPart,
  room: Box,
  { ratio, above, sized }: ViewsAsked,
): (Views & { readonly top: number }) | undefined {
  const { part } = drawn
  const slices = slicesOf(part)
  const [xs, ys] = [part.outline.map(({ x_mm }) => x_mm), part.outline.map(({ y_mm }) => y_mm)]
  const face = { width: ratio * (Math.max(...xs) - Math.min(...xs)), height: ratio * (Math.max(...ys) - Math.min(...ys)) }
  const side = ratio * (slices[slices.length - 1].to_mm - slices[0].from_mm)
  const sizes = faceDimensions(sized)
  const before = rowsRoom(sizes.along.y.length) + BESIDE
  const below = rowsRoom(Math.max(sizes.along.x.length, slices.length + 1))
  const wanted = { width: before + face.width + BETWEEN_VIEWS + BESIDE + side + BESIDE, height: above + face.height + below }
  const [width, height] = [room.right - room.left, room.bottom - room.top]
  if (wanted.width > width || wanted.height > height) return undefined
  const spare = { x: (width - wanted.width) / 3, y: (height - wanted.height) / 3 }
  const corner: At = { x: room.left + before + spare.x, y: room.top + above + spare.y }
  const placing = { ratio, origin: { x: corner.x - ratio * Math.min(...xs), y: corner.y + ratio * Math.max(...ys) } }
  const across = acrossOnPaper(slices, { ratio, projection, left: corner.x + face.width + BETWEEN_VIEWS + BESIDE + spare.x })
  const edges = { below: corner.y + face.height, before: corner.x }
  const ink = [
    ...faceView(part, placing),
    ...threadsOnFace({ part, screws }, placing),
    ...dimensionsBelow(sizes.placed(placing).x, edges.below),
    ...dimensionsBefore(sizes.placed(placing).y, edges.before),
    ...sideView(part, { placing, across, projection }),
    ...threadsOnSide({ part, screws }, { placing, across }),
    ...(hasZones(part) ? faceDatum({ across, slices, projection, y: corner.y + DATUM_at * face.height }) : []),
    ...dimensionsBelow(sideDimensions(slices, { across, foot: edges.below }), edges.below),
  ]
  return { placing, ink, top: corner.y }
}

/** How far down the side view the datum of its face stands. */
const DATUM_at = 0.8

/** Whether any zone counts from the face. */
function hasZones({ holes, edges }: Part): boolean {
  return (
    holes.some(({ positionZone_mm }) => positionZone_mm !== undefined) ||
    edges.some(({ profileZone_mm }) => profileZone_mm !== undefined)
  )
}
