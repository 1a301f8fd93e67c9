import { withGuard } from './formula-guard.ts'

/**
 * Rows as comma-separated values after RFC 4180 (from memory): lines end with CR LF, a cell with a comma, a quotation mark or a line end
 * stands in quotation marks. A mark of the byte order tells spreadsheets that it is UTF-8. No cell is a formula.
 */
export function csvText(rows: readonly (readonly string[])[]): string {
  return `\ufeff${rows.map((row) => `${row.map(cellText).join(',')}\r\n`).join('')}`
}

function cellText(cell: string): string {
  const guarded = withGuard(cell)
  return /[",;\t\r\n]/.test(guarded) ? `"${guarded.replaceAll('"', '""')}"` : guarded
}
