import type { ValueText } from '../report/index.ts'

/** Widest line that text is broken to: long lines are hard to read. */
const LINE_columns = 100

/** Breaks text between words into lines of readable length, each begun with `indent`. */
export function wrapped(text: string, indent = ''): string {
  const lines: string[] = []
  let line = ''
  for (const word of text.split(/\s+/)) {
    const longer = line === '' ? word : `${line} ${word}`
    if (line !== '' && indent.length + longer.length > LINE_columns) {
      lines.push(line)
      line = word
    } else line = longer
  }
  return [...lines, line].map((full) => `${indent}${full}`).join('\n')
}

/** One cell of a table; numbers stand to the right so that they line up. `paint` colours it after it has been measured. */
export interface Cell {
  readonly text: string
  readonly side: 'left' | 'right'
  readonly paint?: (text: string) => string
}

/** Rows of equal length as lines with aligned columns, two spaces between them and before the first. */
export function aligned(rows: readonly (readonly Cell[])[]): readonly string[] {
  const widths = (rows[0] ?? []).map((_cell, column) => Math.max(...rows.map((row) => row[column].text.length)))
  return rows.map((row) => {
    const cells = row.map(({ text, side, paint }, column) => {
      const padded = side === 'left' ? text.padEnd(widths[column]) : text.padStart(widths[column])
      return paint === undefined ? padded : paint(padded)
    })
    return `  ${cells.join('  ')}`.trimEnd()
  })
}

/** Number and unit as one word group: the degree sign stands at its number, other units a space apart. */
export function joined({ number, unit }: ValueText): string {
  return unit === '°' ? `${number}°` : `${number} ${unit}`.trimEnd()
}
