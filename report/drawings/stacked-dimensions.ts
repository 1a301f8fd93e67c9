/**
 * Dimensions of one view, one a row, the shortest nearest to the view: so no two dimension lines cross, and each has its row for its words.
 *
 *     │  20      │              Words stand over the middle of their line where no extension line of a longer
 *     ├─────────▶│  30  │       dimension passes there, else beside all rows: below the view to the left, before it above.
 *     ├─────────────────▶
 */
import { type At, type Box, boxOf, frame, headAt, type Ink, type Line, lineMeets, say, stroke, type Words } from './ink.ts'

/** A dimension between two places of the view. */
export interface Dimension {
  readonly from: At
  readonly to: At
  readonly words: string
  /** A theoretically exact size, framed (ISO 1101). */
  readonly isExact?: boolean
}

/** Space between rows. */
const ROW = 7.5
/** How far an extension line runs on past its dimension line, and how far from the view it begins. */
const OVER = 1.2
const GAP = 1
const AIR = 0.9
/** Words stand so far over their line, with room for a frame below them. */
const LIFT = 1.7

/** Space that so many rows take beside a view. */
export function rowsRoom(count: number): number {
  return ROW * (count + 1)
}

/** Dimensions along x, in rows below a view. @param edge where the lowest ink of the view stands */
export function dimensionsBelow(dimensions: readonly Dimension[], edge: number): readonly Ink[] {
  return stacked(dimensions, { edge, away: 1, spare: 'before' })
}

/** Dimensions along y, in rows to the left of a view, whose words read from the right. @param edge where the leftmost ink of the view stands */
export function dimensionsBefore(dimensions: readonly Dimension[], edge: number): readonly Ink[] {
  const lying = dimensions.map((one) => ({ ...one, from: laid(one.from), to: laid(one.to) }))
  return stacked(lying, { edge, away: -1, spare: 'after' }).map(raised)
}

interface Rows {
  readonly edge: number
  /** 1 for rows below, −1 for rows above. */
  readonly away: 1 | -1
  /** Where words stand that have no room over their line: the two kinds of rows of one view must not meet in a corner. */
  readonly spare: 'before' | 'after'
}

function stacked(dimensions: readonly Dimension[], { edge, away, spare }: Rows): readonly Ink[] {
  const rows = dimensions
    .toSorted((one, other) => span(one) - span(other))
    .map((dimension, index) => ({ ...dimension, y: edge + away * ROW * (index + 1), spare }))
  const extensions = merged(
    rows.flatMap(({ from, to, y }) =>
      [from, to].map((end) => stroke({ x: end.x, y: end.y + away * GAP }, { x: end.x, y: y + away * OVER })),
    ),
  )
  return [...extensions, ...rows.flatMap((row) => drawnRow(row, extensions))]
}

const span = ({ from, to }: Dimension): number => Math.abs(to.x - from.x)

interface Row extends Dimension {
  readonly y: number
  readonly spare: Rows['spare']
}

function drawnRow(row: Row, extensions: readonly Line[]): readonly Ink[] {
  const { y, isExact } = row
  const [left, right] = [Math.min(row.from.x, row.to.x), Math.max(row.from.x, row.to.x)]
  const [start, end] = [
    { x: left, y },
    { x: right, y },
  ]
  const over = say(row.words, { x: (left + right) / 2, y: y - LIFT }, { side: 'middle' })
  const isFree = !extensions.some((line) => lineMeets(line, aired(over)))
  const words = isFree ? over : beside(row, extensions)
  const box = boxOf(words)
  const line = stroke({ x: Math.min(left, box.left), y }, { x: Math.max(right, box.right), y })
  return [
    isFree ? stroke(start, end) : line,
    headAt(start, end),
    headAt(end, start),
    words,
    ...(isExact ? frame(aired(words)) : []),
  ]
}

function beside({ words, y, spare }: Row, extensions: readonly Line[]): Words {
  const xs = extensions.map((line) => line.from.x)
  const x = spare === 'before' ? Math.min(...xs) - 2 * AIR : Math.max(...xs) + 2 * AIR
  return say(words, { x, y: y - LIFT }, { side: spare === 'before' ? 'end' : 'start' })
}

/** Extension lines at one place are one line, as long as the longest. */
function merged(lines: readonly Line[]): readonly Line[] {
  const byPlace = new Map<string, Line>()
  for (const line of lines) {
    const key = line.from.x.toFixed(3)
    const known = byPlace.get(key)
    const ends = [line, ...(known ? [known] : [])].flatMap(({ from, to }) => [from.y, to.y])
    const [top, bottom] = [Math.min(...ends), Math.max(...ends)]
    byPlace.set(key, stroke({ x: line.from.x, y: top }, { x: line.from.x, y: bottom }))
  }
  return [...byPlace.values()]
}

/** Room about words, in which a frame fits. */
function aired(words: Words): Box {
  const { left, top, right, bottom } = boxOf(words)
  return { left: left - AIR, right: right + AIR, top: top - AIR / 2, bottom }
}

/** The sheet turned so that what reads from the right lies upright: up the sheet becomes to the right. */
function laid({ x, y }: At): At {
  return { x: -y, y: x }
}

function raised(one: Ink): Ink {
  const back = ({ x, y }: At): At => ({ x: y, y: -x })
  switch (one.kind) {
    case 'line':
      return { ...one, from: back(one.from), to: back(one.to) }
    case 'head':
      return { ...one, corners: [back(one.corners[0]), back(one.corners[1]), back(one.corners[2])] }
    case 'circle':
      return { ...one, at: back(one.at) }
    case 'words':
      return { ...one, at: back(one.at), turned: true }
  }
}
