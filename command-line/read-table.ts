import { createReadStream } from 'node:fs'
import { limits, sentence } from '../engine/index.ts'
import { fileRows, type TableRows } from '../report/index.ts'
import { asWrongUse, readBounded } from './design-file.ts'
import { WrongUse } from './terminal.ts'

/** Rows of a file of separated values (comma, semicolon or tab). @throws WrongUse when it cannot be opened, is too large or no table */
export async function readTable(path: string): Promise<TableRows> {
  let bytes: Uint8Array
  try {
    bytes = await readBounded(createReadStream(path), limits.tableBytes)
  } catch (error) {
    throw asWrongUse(error, path)
  }
  const { value, problems } = fileRows(bytes)
  if (problems !== undefined) throw new WrongUse(problems.map((problem) => sentence(path, problem)).join('\n'))
  return value
}
