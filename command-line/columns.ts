/** Widest line that text is broken to: long lines are hard to read. */
const LINE_columns = 100

/** Breaks text between words into lines of readable length, each begun with `indent`. */
export function wrapped(text: string, indent = ''): string {
  return wordLines(text, LINE_columns - indent.length)
    .map((line) => `${indent}${line}`)
    .join('\n')
}

/** One cell of a table; numbers stand to the right so that they line up. `paint` colours it after it has been measured. */
export interface Cell {
  readonly text: string
  readonly side: 'left' | 'right'
  /** Widest that the cell may be; longer text goes on in the lines below. */
  readonly most_columns?: number
  readonly paint?: (text: string) => string
}

/** Rows of equal length as text with aligned columns, two spaces between them and before the first; a row may take several lines. */
export function aligned(rows: readonly (readonly Cell[])[]): readonly string[] {
  const broken = rows.map((row) => row.map(({ text, most_columns }) => wordLines(text, most_columns ?? text.length)))
  const widths = (rows[0] ?? []).map((_cell, column) =>
    Math.max(...broken.flatMap((row) => row[column].map((line) => line.length))),
  )
  return rows.map((row, index) => {
    const height = Math.max(...broken[index].map((lines) => lines.length))
    return Array.from({ length: height }, (_, line) =>
      tableLine(row, { texts: broken[index].map((lines) => lines[line] ?? ''), widths }),
    ).join('\n')
  })
}

interface LineOfCells {
  readonly texts: readonly string[]
  readonly widths: readonly number[]
}

function tableLine(row: readonly Cell[], { texts, widths }: LineOfCells): string {
  const cells = row.map(({ side, paint }, column) => {
    const padded = side === 'left' ? texts[column].padEnd(widths[column]) : texts[column].padStart(widths[column])
    return paint === undefined ? padded : paint(padded)
  })
  return `  ${cells.join('  ')}`.trimEnd()
}

/** A space that a line is not broken at. In a terminal it ends as a plain one, which can be searched for. */
const NO_BREAK = '\u00a0'

function wordLines(text: string, most_columns: number): readonly string[] {
  const lines: string[] = []
  let line = ''
  for (const word of text.split(/[^\S\u00a0]+/)) {
    const longer = line === '' ? word : `${line} ${word}`
    if (line !== '' && longer.length > most_columns) {
      lines.push(line)
      line = word
    } else line = longer
  }
  return [...lines, line].map((one) => one.replaceAll(NO_BREAK, ' '))
}
