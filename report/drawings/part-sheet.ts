/**
 * The drawing of one part on one sheet.
 *
 *     ┌──────────────────────────────────────────────┐
 *     │            holes and edges in words          │
 *     │  sizes   face of the part        side view   │
 *     │  across  sizes below it          its sizes   │
 *     │  corners of the outline  notes  title block  │
 *     └──────────────────────────────────────────────┘
 *
 * The largest scale is taken at which everything has its place; where none does, the next larger paper.
 */
import type { DrawnPart, Screw } from '../../engine/index.ts'
import { calloutSize, calloutsOf, calloutsWidth, drawCallouts } from './callouts.ts'
import {
  cornerColumns,
  cornerColumnWidth,
  cornerList,
  cornerListHeight,
  cornerMarks,
  freeMark,
  wrappedWords,
} from './corner-marks.ts'
import { type At, type Box, frame, type Ink, lettering_mm, say } from './ink.ts'
import { innerFrame, type Paper, type PaperName, papersFrom, scales } from './paper.ts'
import { faceDimensions, sideDimensions } from './part-dimensions.ts'
import { faceView, onPaper, type Placing, type Projection, sideView, slicesOf } from './part-views.ts'
import type { Sheet } from './sheet-file.ts'
import { dimensionsBefore, dimensionsBelow, rowsRoom } from './stacked-dimensions.ts'
import { threadsOnFace, threadsOnSide } from './thread-views.ts'
import { drawTitleBlock, type TitleBlock, titleSize } from './title-block.ts'

/** What a sheet is asked for. */
export interface PartSheetAsked {
  readonly drawn: DrawnPart
  /** Those that are turned into it. */
  readonly screws: readonly Screw[]
  readonly notes: readonly string[]
  readonly block: Omit<TitleBlock, 'scale' | 'paper' | 'projection'>
  readonly paper: PaperName
  readonly projection: Projection
}

/** The sheet; undefined for a part without an outline or a thickness, and for one that has no place on any paper at any scale. */
export function partSheet(asked: PartSheetAsked): Sheet | undefined {
  const { part } = asked.drawn
  if (part.outline.length === 0 || slicesOf(part).length === 0) return undefined
  for (const paper of papersFrom(asked.paper)) {
    for (const scale of scales) {
      const ink = laidOut(asked, { paper, ratio: scale.ratio, words: scale.words })
      if (ink !== undefined) return { name: `part-${part.id}`, title: `Drawing of ${part.name}`, paper, ink }
    }
  }
  return undefined
}

interface Tried {
  readonly paper: Paper
  readonly ratio: number
  readonly words: string
}

/** Room for an arrow and its words beside a row of dimensions, and for lines from the blocks to the view. */
const BESIDE = 16
const LEADERS = 11
const BETWEEN_VIEWS = 14
const INSET = 4

function laidOut(asked: PartSheetAsked, { paper, ratio, words }: Tried): readonly Ink[] | undefined {
  const { drawn, block, projection } = asked
  const sheet = innerFrame(paper)
  const foot = footOf(asked, sheet)
  if (foot === undefined) return undefined
  const room = { left: sheet.left + INSET, top: sheet.top + INSET, right: sheet.right - INSET, bottom: foot.top - INSET }
  const views = viewsOf(asked, room, ratio)
  if (views === undefined) return undefined
  const corners = cornerMarks(drawn.part.outline, views.placing, views.ink)
  const marks = corners && threadMarks(asked, views.placing, { ink: views.ink, corners })
  if (marks === undefined) return undefined
  const title = drawTitleBlock({ ...block, scale: words, paper: paper.name, projection }, { x: sheet.right, y: sheet.bottom })
  return [...frame(sheet, 'wide'), ...views.ink, ...marks, ...foot.ink, ...title]
}

/** Corners and the names of threads; undefined where one finds no place. */
function threadMarks(
  { screws }: PartSheetAsked,
  placing: Placing,
  { ink, corners }: { readonly ink: readonly Ink[]; readonly corners: readonly Ink[] },
): readonly Ink[] | undefined {
  const marks = [...corners]
  for (const { id, holdsMount } of screws) {
    if (holdsMount === undefined) continue
    const mark = freeMark(`thread ${id}`, onPaper(placing, holdsMount.at), [...ink, ...marks])
    if (mark === undefined) return undefined
    marks.push(...mark)
  }
  return marks
}

interface Foot {
  readonly top: number
  readonly ink: readonly Ink[]
}

const NOTE_LINE = 3.9
const CORNER_LINES = 9
/** Narrower notes are hard to read; Letter leaves 63 mm beside two columns of corners. */
const NOTES_LEAST = 60

/** Corners and notes, to the left of the title block; undefined where they have no room there. */
function footOf({ drawn, notes }: PartSheetAsked, sheet: Box): Foot | undefined {
  const { outline } = drawn.part
  const cornersWidth = Math.max(2, cornerColumns(outline.length, CORNER_LINES)) * cornerColumnWidth
  const left = sheet.left + INSET + cornersWidth
  const width = sheet.right - titleSize.width - INSET - left
  const size = lettering_mm.table
  const numbered = notes.map((note, index) => wrappedWords(`${index + 1}. ${note}`, width, size))
  const lines = numbered.flat()
  const height = Math.max(cornerListHeight(CORNER_LINES), titleSize.height, NOTE_LINE * (lines.length + 1)) + INSET
  const most = (sheet.bottom - sheet.top) / 2
  if (width < NOTES_LEAST || height > most) return undefined
  const top = sheet.bottom - height
  const said = lines.map((words, index) => say(words, { x: left, y: top + NOTE_LINE * (index + 1) }, { size }))
  return { top, ink: [...cornerList(outline, { x: sheet.left + INSET, y: top + 1 }, CORNER_LINES), ...said] }
}

interface Views {
  readonly placing: Placing
  readonly ink: readonly Ink[]
}

/** Both views with their sizes and blocks; undefined where the room is too small for them at this scale. */
function viewsOf({ drawn, screws, projection }: PartSheetAsked, room: Box, ratio: number): Views | undefined {
  const { part } = drawn
  const callouts = calloutsOf(drawn)
  const slices = slicesOf(part)
  const [xs, ys] = [part.outline.map(({ x_mm }) => x_mm), part.outline.map(({ y_mm }) => y_mm)]
  const face = { width: ratio * (Math.max(...xs) - Math.min(...xs)), height: ratio * (Math.max(...ys) - Math.min(...ys)) }
  const side = ratio * (slices[slices.length - 1].to_mm - slices[0].from_mm)
  const sizes = faceDimensions(drawn)
  const before = rowsRoom(sizes.along.y.length) + BESIDE
  const above = Math.max(0, ...callouts.map((callout) => calloutSize(callout).height)) + LEADERS + BESIDE / 2
  const below = rowsRoom(Math.max(sizes.along.x.length, slices.length + 1))
  const wanted = { width: before + face.width + BETWEEN_VIEWS + BESIDE + side + BESIDE, height: above + face.height + below }
  const [width, height] = [room.right - room.left, room.bottom - room.top]
  if (wanted.width > width || wanted.height > height || calloutsWidth(callouts) > width) return undefined
  const spare = { x: (width - wanted.width) / 3, y: (height - wanted.height) / 3 }
  const corner: At = { x: room.left + before + spare.x, y: room.top + above + spare.y }
  const placing = { ratio, origin: { x: corner.x - ratio * Math.min(...xs), y: corner.y + ratio * Math.max(...ys) } }
  const left = corner.x + face.width + BETWEEN_VIEWS + BESIDE + spare.x
  const edges = { below: corner.y + face.height, before: corner.x }
  const bottom = corner.y - LEADERS - BESIDE / 2
  const ink = [
    ...faceView(part, placing),
    ...threadsOnFace({ part, screws }, placing),
    ...dimensionsBelow(sizes.placed(placing).x, edges.below),
    ...dimensionsBefore(sizes.placed(placing).y, edges.before),
    ...sideView(part, { placing, left, projection }),
    ...threadsOnSide({ part, screws }, { placing, left }),
    ...dimensionsBelow(sideDimensions(slices, { ratio, left, foot: edges.below }), edges.below),
    ...drawCallouts(callouts, { left: room.left, right: room.right, bottom, placing }),
  ]
  return { placing, ink }
}
