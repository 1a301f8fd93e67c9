/** Comma-separated values after RFC 4180, to be opened in a spreadsheet. */
export type CsvCell = string | number | undefined

/** Rows as text, lines ended as RFC 4180 asks; what is not known stays empty. */
export function csvText(rows: readonly (readonly CsvCell[])[]): string {
  return rows.map((cells) => `${cells.map(cellText).join(',')}\r\n`).join('')
}

/** A text that a spreadsheet would take for a formula is set apart by a blank before it. */
function cellText(value: CsvCell): string {
  if (value === undefined) return ''
  if (typeof value === 'number') return String(value)
  const text = /^[=+\-@]/.test(value) ? ` ${value}` : value
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text
}
