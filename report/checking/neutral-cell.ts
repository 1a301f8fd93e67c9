/** What a spreadsheet would work out instead of showing it. */
const FORMULA = /^[=+\-@\t\r]/
const NUMBER = /^[-+]?[\d.,]+( ?[a-zµ°]+)?$/i

/**
 * A cell of a comma-separated table. Text that a spreadsheet would take for a formula gets an apostrophe in front, by which it is shown
 * as text; quotes stand about what holds a comma, a quote or a line end.
 *
 * Source: RFC 4180 (from memory) for the quotes.
 */
export function neutralCell(text: string): string {
  const neutral = FORMULA.test(text) && !NUMBER.test(text) ? `'${text}` : text
  return /[",;\r\n]/.test(neutral) ? `"${neutral.replaceAll('"', '""')}"` : neutral
}
