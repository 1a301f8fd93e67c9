/**
 * What a coater is told, a sheet a coated part and one for the pins of each coating.
 *
 *     ┌──────────────────────────────┐
 *     │ face with racks   table of   │
 *     │ and holes         sizes      │
 *     │ the film in words title block│
 *     └──────────────────────────────┘
 */
import type { Coating, DrawnPart, Screw, ShopDesign } from '../../engine/index.ts'
import { coatedColumns, coatedPinRows, coatedRows, coatingLines, partCoatingLines } from './coating-words.ts'
import { freeMark, wrappedWords } from './corner-marks.ts'
import { rowLetter } from './hole-table.ts'
import { type Box, frame, type Ink, lettering_mm, say } from './ink.ts'
import { type HoleName, maskedLegend, maskedLines, namedPlaces, sideWords } from './masked-marks.ts'
import { innerFrame, type Paper, type PaperName, papersFrom, scales } from './paper.ts'
import { faceView, onPaper, type Placing } from './part-views.ts'
import type { Sheet } from './sheet-file.ts'
import { type LaidTable, laidTable } from './table-ink.ts'
import { type Threaded, threadsOnFace } from './thread-views.ts'
import { drawTitleBlock, type TitleBlock, titleSize } from './title-block.ts'

type Block = Omit<TitleBlock, 'scale' | 'paper' | 'projection'>

/** What the sheets are asked for. */
export interface CoatingAsked {
  readonly paper: PaperName
  readonly block: Block
}

/** Of one coated part with its screws; undefined for one that has no outline, and where it has no room on any paper. */
export function coatedPartSheet(
  { drawn, screws }: { readonly drawn: DrawnPart; readonly screws: readonly Screw[] },
  asked: CoatingAsked,
): Sheet | undefined {
  const { part } = drawn
  const { coating } = part
  if (coating === undefined || part.outline.length === 0) return undefined
  const legend = part.masked === undefined ? [] : [maskedLegend]
  const lines = [...coatingLines(coating), ...partCoatingLines(part), ...legend]
  const named = (holeName: HoleName, rows: readonly (readonly string[])[]): Sheet | undefined => {
    const view = (room: Box): View | undefined => {
      for (const { ratio, words } of scales) {
        const ink = partInk({ part, screws, holeName }, room, ratio)
        if (ink !== undefined) return { ink, scale: words }
      }
      return undefined
    }
    return firstSheet({ name: `coating-${part.id}`, table: laidTable(coatedColumns, rows), lines, view }, asked)
  }
  const rows = coatedRows(drawn)
  const lettered = rows.map(([where, ...rest], row) => [`${rowLetter(row)}  ${where}`, ...rest])
  return named((id) => id, rows) ?? named((_, row) => rowLetter(row), lettered)
}

/** Of the pins that have one coating. @param name of the sheet's file */
export function coatedPinsSheet(
  { shop, coating, name }: { readonly shop: ShopDesign; readonly coating: Coating; readonly name: string },
  asked: CoatingAsked,
): Sheet | undefined {
  const table = laidTable(coatedColumns, coatedPinRows(shop, coating))
  return firstSheet({ name, table, lines: coatingLines(coating), view: undefined }, asked)
}

interface View {
  readonly ink: readonly Ink[]
  readonly scale: string
}

interface Content {
  readonly name: string
  readonly table: LaidTable
  readonly lines: readonly string[]
  /** Drawn into a room, undefined where it does not fit; none where a table says all. */
  readonly view: ((room: Box) => View | undefined) | undefined
}

/** On the first paper that has room. */
function firstSheet(content: Content, { paper, block }: CoatingAsked): Sheet | undefined {
  for (const on of papersFrom(paper)) {
    const ink = laidOut(content, on, block)
    if (ink !== undefined) return { name: content.name, title: block.title, paper: on, ink }
  }
  return undefined
}

const INSET = 6
const LINE = 4.1

function laidOut({ table, lines, view }: Content, paper: Paper, block: Block): readonly Ink[] | undefined {
  const sheet = innerFrame(paper)
  const left = sheet.left + INSET
  const size = lettering_mm.table
  const words = lines.flatMap((line) => wrappedWords(line, sheet.right - titleSize.width - INSET - left, size))
  const foot = sheet.bottom - Math.max(titleSize.height, LINE * (words.length + 1))
  const room = { left, top: sheet.top + INSET, right: sheet.right - INSET - table.width - INSET, bottom: foot - INSET }
  if (room.right < room.left || room.top + table.height > room.bottom) return undefined
  const shown = view === undefined ? { ink: [], scale: '–' } : view(room)
  if (shown === undefined) return undefined
  return [
    ...frame(sheet, 'wide'),
    ...shown.ink,
    ...table.inkAt({ x: view === undefined ? left : sheet.right - INSET - table.width, y: room.top }),
    ...words.map((line, index) => say(line, { x: left, y: foot + LINE * (index + 1) }, { size })),
    ...drawTitleBlock({ ...block, scale: shown.scale, paper: paper.name }, { x: sheet.right, y: sheet.bottom }),
  ]
}

/** Room about the outline for the names of what lies near it. */
const AROUND = 16
const RACK = 1

/** The face with the places of the rack as dots, what is masked with its line, all by their names; undefined where it does not fit. */
function partInk(
  { holeName, ...threaded }: Threaded & { readonly holeName: HoleName },
  room: Box,
  ratio: number,
): readonly Ink[] | undefined {
  const { part } = threaded
  const { outline, racks = [] } = part
  const [xs, ys] = [outline.map(({ x_mm }) => x_mm), outline.map(({ y_mm }) => y_mm)]
  const [width, height] = [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)].map((size) => ratio * size)
  if (width + 2 * AROUND > room.right - room.left || height + 2 * AROUND > room.bottom - room.top) return undefined
  const origin = {
    x: (room.left + room.right - width) / 2 - ratio * Math.min(...xs),
    y: (room.top + room.bottom + height) / 2 + ratio * Math.min(...ys),
  }
  const placing: Placing = { ratio, origin }
  const dots = racks.map((at): Ink => ({ kind: 'circle', at: onPaper(placing, at), radius: RACK, type: 'narrow', filled: true }))
  const named = [...racks.map((at, index) => ({ at, words: `rack ${index + 1}` })), ...namedPlaces(threaded, holeName)]
  const sides = sideWords(threaded)
  const caption = { x: (room.left + room.right) / 2, y: room.top + lettering_mm.table }
  const ink = [
    ...faceView(part, placing),
    ...threadsOnFace(threaded, placing),
    ...maskedLines(threaded, placing),
    ...dots,
    ...(sides === undefined ? [] : [say(sides, caption, { size: lettering_mm.table, side: 'middle' })]),
  ]
  for (const { at, words } of named) {
    const mark = freeMark(words, onPaper(placing, at), ink)
    if (mark === undefined) return undefined
    ink.push(...mark)
  }
  return ink
}
