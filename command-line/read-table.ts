import { readFile } from 'node:fs/promises'
import { CsvError, parse } from 'csv-parse/sync'
import { asWrongUse } from './design-file.ts'
import { WrongUse } from './terminal.ts'

/** Bytes of a table of readings: 5,000 readings are 200 kB. */
const TABLE_most_bytes = 50_000_000

/** Rows of a file of separated values (comma, semicolon or tab). @throws WrongUse when it cannot be opened, is too large or no table */
export async function readTable(path: string): Promise<readonly (readonly string[])[]> {
  let bytes: Buffer
  try {
    bytes = await readFile(path)
  } catch (error) {
    throw asWrongUse(error, path)
  }
  if (bytes.length > TABLE_most_bytes)
    throw new WrongUse(`${path}: ${bytes.length} bytes; a file of readings has at most ${TABLE_most_bytes}`)
  try {
    return parse(bytes, { bom: true, delimiter: [',', ';', '\t'], relax_column_count: true, skip_empty_lines: false })
  } catch (error) {
    if (error instanceof CsvError) throw new WrongUse(`${path}: ${error.message}`)
    throw error
  }
}
