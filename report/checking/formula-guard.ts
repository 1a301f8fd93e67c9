/**
 * A spreadsheet takes a cell that begins with `=`, `+`, `-` or `@` for a formula and works it out. On its way out such a text gets an
 * apostrophe before it, which spreadsheets show as text; on its way in one apostrophe before such a sign is taken off again, so that out and
 * in gives what was there. Numbers with their sign stay as they are.
 *
 * SOURCE trade: OWASP, CSV injection (from memory).
 */

/** A sign that begins a formula, behind apostrophes or without; tab and return are passed over by spreadsheets. */
const GUARDED = /^'+[=+\-@\t\r]/
const FORMULA = /^'*[=+\-@\t\r]/
const NUMBER = /^[-+]?\d*[.,]?\d+(e[-+]?\d+)?$/i

/** A cell on its way out. */
export const withGuard = (cell: string): string => (FORMULA.test(cell) && !NUMBER.test(cell) ? `'${cell}` : cell)

/** A cell on its way in. */
export const withoutGuard = (cell: string): string => (GUARDED.test(cell) ? cell.slice(1) : cell)
