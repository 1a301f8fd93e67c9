/**
 * The finger put together, open: every part and pin with its number in a balloon, the list of them, and what the bench has to know.
 *
 *     ┌───────────────────────────────┐
 *     │ ① ② parts ③        list       │
 *     │ the finger         of items   │
 *     │ ⑦ ⑧ pins ⑨                    │
 *     │ words in columns   title block│
 *     └───────────────────────────────┘
 */
import { type Design, type Evaluation, type Pin, type Point, type Posture, partsList } from '../../engine/index.ts'
import { boxAround, inMount } from '../drawing/view.ts'
import { assemblyWords, type WordsBlock } from './assembly-words.ts'
import { wrappedWords } from './corner-marks.ts'
import { type At, type Box, frame, type Ink, lettering_mm, say, stroke } from './ink.ts'
import { innerFrame, type Paper } from './paper.ts'
import { faceView, onPaper, type Placing } from './part-views.ts'
import type { Sheet } from './sheet-file.ts'
import { sideBySide } from './side-by-side.ts'
import { drawTitleBlock, type TitleBlock, titleSize } from './title-block.ts'

/** What the sheet is asked for. */
export interface AssemblyAsked {
  readonly evaluation: Evaluation
  readonly paper: Paper
  readonly block: Omit<TitleBlock, 'scale' | 'paper' | 'projection'>
}

/** The sheet; undefined for a finger that cannot be moved, and so has no posture to be drawn in. */
export function assemblySheet({ evaluation, paper, block }: AssemblyAsked): Sheet | undefined {
  const posture = evaluation.travel?.postures.at(0)
  if (posture === undefined) return undefined
  const sheet = innerFrame(paper)
  const list = partsList(evaluation.design)
  const words = wordsInk(assemblyWords(evaluation, list), sheet)
  const room = { left: sheet.left + INSET, top: sheet.top + INSET, right: sheet.right - LIST, bottom: words.top - INSET }
  const ink = [
    ...frame(sheet, 'wide'),
    ...viewInk(evaluation, posture, room),
    ...listInk(evaluation, { x: sheet.right - LIST + INSET, y: sheet.top + INSET }),
    ...words.ink,
    ...drawTitleBlock({ ...block, scale: '–', paper: paper.name }, { x: sheet.right, y: sheet.bottom }),
  ]
  return { name: 'assembly', title: 'Assembly', paper, ink }
}

const INSET = 5
const LIST = 96
const LINE = 4.1
const BALLOON = 3.6
const ROW = 16

/** Outlines as they lie with the finger open, and balloons in a row over it (parts) and one under it (pins, springs, screws). */
function viewInk({ design }: Pick<Evaluation, 'design'>, posture: Posture, room: Box): readonly Ink[] {
  const { parts } = design
  const moved = parts.map((part, index) => ({
    ...part,
    outline: part.outline.map((at) => inMount(posture, index, at)),
    holes: part.holes.map(({ slot: _, ...hole }) => ({ ...hole, at: inMount(posture, index, hole.at) })),
    edges: [],
  }))
  const box = boxAround(
    moved.flatMap(({ outline, holes }) => [...outline, ...holes.map(({ at }) => at)]),
    0,
  )
  const [width, height] = [box.most.x_mm - box.least.x_mm, box.most.y_mm - box.least.y_mm]
  const ratio = Math.min((room.right - room.left) / width, (room.bottom - room.top - 2 * ROW) / height)
  const placing: Placing = {
    ratio,
    origin: {
      x: room.left - ratio * box.least.x_mm,
      y: (room.top + room.bottom) / 2 + (ratio * (box.least.y_mm + box.most.y_mm)) / 2,
    },
  }
  const middles = moved.map(({ outline, holes }) => meanOf(outline.length > 0 ? outline : holes.map(({ at }) => at)))
  const partMarks = middles.map((at, index) => ({ at: onPaper(placing, at), number: index + 1 }))
  const smallMarks = smallPlaces(design, posture).map((at, index) => ({
    at: onPaper(placing, at),
    number: parts.length + index + 1,
  }))
  const middle = (room.top + room.bottom) / 2
  const half = (ratio * height) / 2 + ROW
  return [
    ...moved.flatMap((part) => faceView(part, placing)),
    ...balloons(partMarks, { ...room, bottom: middle - half + BALLOON }),
    ...balloons(smallMarks, { ...room, bottom: middle + half + BALLOON }),
  ]
}

/** Where pins, springs and screws stand, in the order of the parts list; a screw that does not say where stands at the middle of its part. */
function smallPlaces({ pins, springs, screws = [], parts }: Design, posture: Posture): readonly Point[] {
  const pinAt = (index: number): Point => posture.pinsAt[index]
  return [
    ...pins.map((_, index) => pinAt(index)),
    ...springs.map((spring) => {
      if (spring.kind === 'torsion') return coilPlace(pinAt(spring.pin), pins[spring.pin])
      return meanOf([spring.from, spring.to].map(({ part, at }) => inMount(posture, part, at)))
    }),
    ...screws.map(({ part, holdsMount }) => holdsMount?.at ?? inMount(posture, part, meanOf(parts[part].outline))),
  ]
}

/** A coil lies about its pin: a diameter beside it its balloon points to the coil, and the pin's to the pin. */
function coilPlace({ x_mm, y_mm }: Point, { diameter_mm }: Pin): Point {
  return { x_mm: x_mm - diameter_mm, y_mm }
}

function meanOf(points: readonly Point[]): Point {
  const sum = points.reduce((all, { x_mm, y_mm }) => ({ x_mm: all.x_mm + x_mm, y_mm: all.y_mm + y_mm }), { x_mm: 0, y_mm: 0 })
  return { x_mm: sum.x_mm / points.length, y_mm: sum.y_mm / points.length }
}

/** In the order of what they point to, each with a line that ends in a dot. */
function balloons(marks: readonly { readonly at: At; readonly number: number }[], { left, right, bottom }: Box): readonly Ink[] {
  const sorted = marks.toSorted((one, other) => one.at.x - other.at.x)
  const blocks = sorted.map(({ at }) => ({ wish: at.x - BALLOON, width: 2 * BALLOON }))
  const begins = sideBySide({ blocks, left, right, gap: 2 })
  return sorted.flatMap(({ at, number }, index): readonly Ink[] => {
    const centre = { x: begins[index] + BALLOON, y: bottom - BALLOON }
    const length = Math.hypot(at.x - centre.x, at.y - centre.y)
    const share = BALLOON / length
    const rim = { x: centre.x + share * (at.x - centre.x), y: centre.y + share * (at.y - centre.y) }
    return [
      { kind: 'circle', at: centre, radius: BALLOON, type: 'narrow' },
      say(String(number), { x: centre.x, y: centre.y + lettering_mm.value / 3 }, { side: 'middle' }),
      stroke(rim, at),
      { kind: 'circle', at, radius: 0.5, type: 'narrow', filled: true },
    ]
  })
}

/** Number, what it is, how many. */
function listInk({ design }: Evaluation, at: At): readonly Ink[] {
  const { items } = partsList(design)
  const size = lettering_mm.table
  const head = say('No., item, a finger', { x: at.x, y: at.y + LINE }, { size, heavy: true })
  const rows = items.flatMap(({ number, title, perFinger_count }, index): readonly Ink[] => {
    const y = at.y + LINE * (index + 2)
    const [first] = wrappedWords(title, LIST - 3 * INSET - 8, size)
    return [
      say(String(number), { x: at.x + 5, y }, { size, side: 'end' }),
      say(first, { x: at.x + 8, y }, { size }),
      say(String(perFinger_count), { x: at.x + LIST - 2 * INSET, y }, { size, side: 'end' }),
    ]
  })
  return [head, ...rows]
}

/** The blocks in two columns to the left of the title block, on as much height as they need. */
function wordsInk(blocks: readonly WordsBlock[], sheet: Box): { readonly top: number; readonly ink: readonly Ink[] } {
  const size = lettering_mm.table
  const width = (sheet.right - titleSize.width - sheet.left - 3 * INSET) / 2
  const lines = blocks.map(({ heading, lines: own }) => [
    ...wrappedWords(heading, width, size).map((words) => ({ words, heavy: true })),
    ...own.flatMap((line) => wrappedWords(line, width, size)).map((words) => ({ words, heavy: false })),
    { words: '', heavy: false },
  ])
  const [first, second] = evenColumns(lines)
  const top = sheet.bottom - Math.max(titleSize.height, LINE * (Math.max(first.length, second.length) + 1))
  const column = (rows: typeof first, left: number): readonly Ink[] =>
    rows.flatMap(({ words, heavy }, index) =>
      words === '' ? [] : [say(words, { x: left, y: top + LINE * (index + 1) }, { size, heavy })],
    )
  return { top, ink: [...column(first, sheet.left + INSET), ...column(second, sheet.left + 2 * INSET + width)] }
}

/** Blocks in their order as two columns of which the longer is as short as it can be. */
function evenColumns<Line>(blocks: readonly (readonly Line[])[]): readonly [readonly Line[], readonly Line[]] {
  const splits = blocks.map((_, after) => [blocks.slice(0, after + 1).flat(), blocks.slice(after + 1).flat()] as const)
  const height = (columns: readonly (readonly Line[])[]): number => Math.max(...columns.map(({ length }) => length))
  return splits.reduce((best, split) => (height(split) < height(best) ? split : best))
}
