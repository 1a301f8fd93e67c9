/** Tables of words on a sheet: a column is as wide as its widest cell, cells that are longer than its bound run on below, a thin line stands between rows. */
import { wrappedWords } from './corner-marks.ts'
import { type At, type Ink, lettering_mm, say, stroke, widthOf } from './ink.ts'

/** A column. */
export interface TableColumn {
  readonly head: string
  /** Width beyond which its cells are broken into lines, mm. */
  readonly most?: number
}

/** A table that knows how much room it takes. */
export interface LaidTable {
  readonly width: number
  readonly height: number
  /** @param at upper left corner */
  readonly inkAt: (at: At) => readonly Ink[]
}

const LINE = 4.1
const BETWEEN_COLUMNS = 4
const BETWEEN_ROWS = 1.4
const size = lettering_mm.table
const USUAL_MOST = 34

/** Lays a table out; columns in which no row says anything are left out. */
export function laidTable(columns: readonly TableColumn[], rows: readonly (readonly string[])[]): LaidTable {
  const used = columns.flatMap((column, index) => (rows.some((row) => row[index] !== '') ? [{ ...column, index }] : []))
  const lines = [used.map(({ head }) => head), ...rows.map((row) => used.map(({ index }) => row[index]))].map((cells) =>
    cells.map((words, column) => wrappedWords(words, used[column].most ?? USUAL_MOST, size)),
  )
  const widths = used.map((_, column) => Math.max(...lines.flatMap((row) => row[column].map((words) => widthOf(words, size)))))
  const heights = lines.map((row) => LINE * Math.max(...row.map(({ length }) => length)) + BETWEEN_ROWS)
  const lefts = widths.map((_, column) => widths.slice(0, column).reduce((sum, width) => sum + width + BETWEEN_COLUMNS, 0))
  const tops = heights.map((_, row) => heights.slice(0, row).reduce((sum, height) => sum + height, 0))
  const width = widths.reduce((sum, own) => sum + own, BETWEEN_COLUMNS * Math.max(0, widths.length - 1))
  const height = heights.reduce((sum, own) => sum + own, 0)
  const inkAt = ({ x, y }: At): readonly Ink[] =>
    lines
      .flatMap((row, index) => [
        ...row.flatMap((cell, column) =>
          cell.map((words, line) =>
            say(words, { x: x + lefts[column], y: y + tops[index] + LINE * (line + 0.8) }, { size, heavy: index === 0 }),
          ),
        ),
        stroke(
          { x, y: y + tops[index] + heights[index] - BETWEEN_ROWS / 2 },
          { x: x + width, y: y + tops[index] + heights[index] - BETWEEN_ROWS / 2 },
        ),
      ])
      .filter((one) => one.kind !== 'words' || one.words !== '')
  return { width, height, inkAt }
}
