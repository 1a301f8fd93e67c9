/** The block at the lower right: what the sheet shows, of which design and revision, at which scale, and who decides. */
import { type At, type Box, frame, type Ink, lettering_mm, say, stroke, widthOf } from './ink.ts'
import type { Projection } from './part-views.ts'

export interface TitleBlock {
  readonly title: string
  readonly design: string
  readonly revision: string
  readonly sheet: string
  readonly scale: string
  readonly paper: string
  readonly projection?: Projection
  /** Words at the left of the last row, such as what a piece weighs. */
  readonly mass?: string
}

/** Size of the block, mm: the same on every paper. */
export const titleSize = { width: 106, height: 41 } as const

/** Heights of the rows below the top. */
const ROWS = [11, 21, 31]
const COLUMNS = [36, 60, 80]
const LABEL = 3.2
const VALUE = 8

/** @param corner lower right corner */
export function drawTitleBlock(block: TitleBlock, corner: At): readonly Ink[] {
  const box = { left: corner.x - titleSize.width, top: corner.y - titleSize.height, right: corner.x, bottom: corner.y }
  const { left, top, right, bottom } = box
  const cell = (label: string, value: string, at: At): readonly Ink[] => [
    say(label, { x: at.x + 1.5, y: at.y + LABEL }, { size: SMALL }),
    say(value, { x: at.x + 1.5, y: at.y + VALUE }),
  ]
  return [
    ...frame(box, 'wide'),
    ...ROWS.map((down) => stroke({ x: left, y: top + down }, { x: right, y: top + down })),
    ...COLUMNS.map((over) => stroke({ x: left + over, y: top + ROWS[1] }, { x: left + over, y: top + ROWS[2] })),
    say(fitted(block.title, lettering_mm.title), { x: left + 1.5, y: top + 7.2 }, { size: lettering_mm.title, heavy: true }),
    ...cell('design', fitted(block.design, lettering_mm.value), { x: left, y: top + ROWS[0] }),
    ...cell('revision', block.revision, { x: left, y: top + ROWS[1] }),
    ...cell('sheet', block.sheet, { x: left + COLUMNS[0], y: top + ROWS[1] }),
    ...cell('scale', block.scale, { x: left + COLUMNS[1], y: top + ROWS[1] }),
    ...cell('paper', block.paper, { x: left + COLUMNS[2], y: top + ROWS[1] }),
    say('Sizes in mm. Test a prototype: this certifies nothing.', { x: left + 1.5, y: top + ROWS[2] + 4 }, { size: SMALL }),
    say(block.mass ?? '', { x: left + 1.5, y: bottom - 1.8 }, { size: SMALL }),
    ...(block.projection ? projectionMark(block.projection, { left: right - 24, top: top + ROWS[2] + 3.5, right, bottom }) : []),
  ].filter((one) => one.kind !== 'words' || one.words !== '')
}

const SMALL = 2.7
/** As much as the block has room for; a longer title ends in dots. */
function fitted(words: string, size: number): string {
  const room = titleSize.width - 3
  if (widthOf(words, size) <= room) return words
  const most = [...words].findLastIndex((_, index, all) => widthOf(`${all.slice(0, index).join('')}…`, size) <= room)
  return `${[...words].slice(0, most).join('').trimEnd()}…`
}

/**
 * The mark of the projection (ISO 5456-2, from memory): a cone cut off, and beside it what is seen from its narrow end. Third-angle shows that
 * view on the side from which it is seen, first-angle on the other.
 */
function projectionMark(projection: Projection, { left, top, bottom }: Box): readonly Ink[] {
  const y = (top + bottom) / 2
  const isThird = projection === 'third-angle'
  const circles = { x: isThird ? left + 5 : left + 17, y }
  const cone = isThird ? left + 11 : left + 3
  const [narrow, broad] = [1.3, 2.4]
  const corners: readonly At[] = [
    { x: cone, y: y - narrow },
    { x: cone + 7, y: y - broad },
    { x: cone + 7, y: y + broad },
    { x: cone, y: y + narrow },
  ]
  return [
    ...[narrow, broad].map((radius): Ink => ({ kind: 'circle', at: circles, radius, type: 'narrow' })),
    ...corners.map((corner, index) => stroke(corner, corners[(index + 1) % corners.length])),
  ]
}
