/**
 * All pins on one sheet, a turned part with letters for its sizes over a table of them, and the springs as a table below.
 *
 *     ┌──────────────────────────────┐
 *     │   d ┌────────────┐ e         │
 *     │     └────────────┘    s      │
 *     │       ├─── l ────┤           │
 *     │ table of the pins            │
 *     │ table of the springs         │
 *     │ notes             title block│
 *     └──────────────────────────────┘
 */
import type { ShopDesign } from '../../engine/index.ts'
import { wrappedWords } from './corner-marks.ts'
import { type At, frame, type Ink, lettering_mm, say, stroke } from './ink.ts'
import { innerFrame, type Paper, type PaperName, papersFrom } from './paper.ts'
import { pinColumns, pinRows, springColumns, springRows } from './pin-rows.ts'
import type { Sheet } from './sheet-file.ts'
import { dimensionsBefore, dimensionsBelow } from './stacked-dimensions.ts'
import { laidTable } from './table-ink.ts'
import { drawTitleBlock, type TitleBlock, titleSize } from './title-block.ts'

/** What the sheet is asked for. */
export interface PinsAsked {
  readonly shop: ShopDesign
  readonly paper: PaperName
  readonly block: Omit<TitleBlock, 'scale' | 'paper' | 'projection'>
}

/** The sheet, on the larger paper where the tables ask for it; undefined where they have no room on that either. */
export function pinsSheet(asked: PinsAsked): Sheet | undefined {
  for (const paper of papersFrom(asked.paper)) {
    const ink = laidOut(asked, paper)
    if (ink !== undefined) return { name: 'pins', title: asked.block.title, paper, ink }
  }
  return undefined
}

const INSET = 6
const PICTURE = 62
const GAP = 7
const NOTE_LINE = 4.1

function laidOut({ shop, block }: PinsAsked, paper: Paper): readonly Ink[] | undefined {
  const sheet = innerFrame(paper)
  const left = sheet.left + INSET
  const tables = [
    laidTable(pinColumns, pinRows(shop)),
    ...(shop.variation.design.springs.length === 0 ? [] : [laidTable(springColumns, springRows(shop.variation.design))]),
  ]
  const tops = tables.map((_, index) =>
    tables.slice(0, index).reduce((top, { height }) => top + height + GAP, sheet.top + PICTURE),
  )
  const end = tops[tops.length - 1] + tables[tables.length - 1].height
  const isWide = tables.some(({ width }) => width > sheet.right - INSET - left)
  if (isWide || end > sheet.bottom - titleSize.height - INSET) return undefined
  const notes = notesInk({ x: left, y: sheet.bottom - titleSize.height }, sheet.right - titleSize.width - INSET - left)
  return [
    ...frame(sheet, 'wide'),
    ...picture({ x: sheet.left + (sheet.right - sheet.left) / 2, y: sheet.top + PICTURE / 2 - 6 }),
    ...tables.flatMap(({ inkAt }, index) => inkAt({ x: left, y: tops[index] })),
    ...notes,
    ...drawTitleBlock({ ...block, scale: '–', paper: paper.name }, { x: sheet.right, y: sheet.bottom }),
  ]
}

const NOTES = [
  'd is a diameter with its limits, l a length by the general tolerance, e the edge of both ends after ISO 13715, s the roughness Ra in µm of the round surface.',
  'Numbers in brackets are those of the parts list. The picture is not to scale.',
  'How straight and how round a pin is, is not in the design: as agreed.',
]

function notesInk(at: At, width: number): readonly Ink[] {
  const size = lettering_mm.table
  return NOTES.flatMap((note, index) => wrappedWords(`${index + 1}. ${note}`, width, size)).map((words, line) =>
    say(words, { x: at.x, y: at.y + NOTE_LINE * (line + 1) }, { size }),
  )
}

/** Half sizes of the picture, and of its broken edges. */
const HALF = { length: 40, radius: 9 } as const
const BROKEN = 2

/** @param middle of the pin */
function picture(middle: At): readonly Ink[] {
  const at = (along: number, up: number): At => ({ x: middle.x + along, y: middle.y - up })
  const { length, radius } = HALF
  const outline = [
    at(-length, radius - BROKEN),
    at(-length + BROKEN, radius),
    at(length - BROKEN, radius),
    at(length, radius - BROKEN),
    at(length, BROKEN - radius),
    at(length - BROKEN, -radius),
    at(-length + BROKEN, -radius),
    at(-length, BROKEN - radius),
  ]
  const round = at(length / 2, radius)
  const edge = at(length - BROKEN / 2, radius - BROKEN / 2)
  return [
    ...outline.map((corner, index) => stroke(corner, outline[(index + 1) % outline.length], 'wide')),
    ...[1, -1].map((side) => stroke(at(side * (length - BROKEN), radius), at(side * (length - BROKEN), -radius))),
    stroke(at(-length - OVER, 0), at(length + OVER, 0), 'centre'),
    ...dimensionsBelow([{ from: at(-length, -radius), to: at(length, -radius), words: 'l' }], middle.y + radius),
    ...dimensionsBefore([{ from: at(-length, -radius), to: at(-length, radius), words: 'Ød' }], middle.x - length),
    ...led(edge, { x: edge.x + LED, y: edge.y - LED }, 'e'),
    ...led(round, { x: round.x + LED, y: round.y - LED }, 's'),
  ]
}

const OVER = 5
const LED = 8

/** A letter at the end of a thin line. */
function led(at: At, to: At, words: string): readonly Ink[] {
  return [
    stroke(at, to),
    stroke(to, { x: to.x + LED, y: to.y }),
    say(words, { x: to.x + LED / 2, y: to.y - 1.2 }, { side: 'middle' }),
  ]
}
