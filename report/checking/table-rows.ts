/**
 * The rows of a table of readings, from a file or from a spreadsheet's clipboard: the one place where separated values are read (RFC 4180,
 * from memory, with three separators). What stands in a cell is text: a formula is never worked out.
 */
import { CsvError, parse } from 'csv-parse/browser/esm/sync'
import { type Checked, limits, type Problem } from '../../engine/index.ts'
import { withoutGuard } from './formula-guard.ts'

/** Cells as text, the heading first. */
export type TableRows = readonly (readonly string[])[]

/** The rows of a file. It is refused by its length before it is decoded; a door need not read on past `limits.tableBytes`. */
export function fileRows(bytes: Uint8Array): Checked<TableRows> {
  if (bytes.byteLength > limits.tableBytes) return { problems: [tooLong] }
  try {
    return tableRows(new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes))
  } catch (error) {
    if (!(error instanceof TypeError)) throw error
    return { problems: [notUtf8] }
  }
}

/** The rows of a text. Its separator is the one that stands in the heading: tab, else semicolon, else comma. */
export function tableRows(text: string): Checked<TableRows> {
  // No letter takes less than a byte.
  if (text.length > limits.tableBytes) return { problems: [tooLong] }
  try {
    const rows: string[][] = parse(text, {
      bom: true,
      delimiter: separatorOf(text),
      relax_column_count: true,
      relax_quotes: true,
    })
    const problem = tooMuch(rows)
    return problem === undefined ? { value: rows.map((row) => row.map(withoutGuard)) } : { problems: [problem] }
  } catch (error) {
    if (!(error instanceof CsvError)) throw error
    return { problems: [quotesWrong(error)] }
  }
}

/** Of decimal commas and semicolons the semicolons part the cells. What stands in quotation marks parts nothing. */
export function separatorOf(text: string): '\t' | ';' | ',' {
  const [heading] = text.replaceAll(/"[^"]*"/g, '').split(/[\r\n]/, 1)
  return heading.includes('\t') ? '\t' : heading.includes(';') ? ';' : ','
}

const wayOut = 'Take the rows of one lot, or fewer of them at a time.'

/** Doors stop reading just past the limit, so that how long it really is remains unknown. */
const tooLong: Problem = {
  code: 'file too long',
  place: '',
  found: `more than ${limits.tableBytes} bytes`,
  needed: `a table of readings of at most ${limits.tableBytes} bytes`,
  wayOut,
}

const notUtf8: Problem = {
  code: 'not utf-8',
  place: '',
  found: 'bytes that are not UTF-8 text',
  needed: 'separated values in UTF-8',
  wayOut: 'Save it from the spreadsheet as CSV in UTF-8, or copy the rows and paste them.',
}

function tooMuch(rows: TableRows): Problem | undefined {
  if (rows.length > limits.tableRows + 1)
    return beyond('', `${rows.length} rows`, `at most ${limits.tableRows} below the heading`)
  for (const [index, row] of rows.entries()) {
    const place = `row ${index + 1}`
    if (row.length > limits.tableColumns) return beyond(place, `${row.length} columns`, `at most ${limits.tableColumns}`)
    const long = row.find((cell) => cell.length > limits.tableCell)
    if (long !== undefined) return beyond(place, `a cell of ${long.length} letters`, `at most ${limits.tableCell}`)
  }
  return undefined
}

const beyond = (place: string, found: string, needed: string): Problem => ({ code: 'too many', place, found, needed, wayOut })

/** The reader counts whole rows that it has read, not lines: a cell in quotation marks may go over several. */
function quotesWrong({ records, message }: CsvError): Problem {
  const place = typeof records === 'number' ? `row ${records + 1}` : ''
  const needed = 'quotation marks around a whole cell, and doubled inside of it'
  return {
    code: 'no table',
    place,
    found: `cells that cannot be told apart (${message})`,
    needed,
    wayOut: 'Look for a " without its other.',
  }
}
