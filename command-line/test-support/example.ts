import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll } from 'vitest'

/** Path of the example design. */
export const examplePath = join(import.meta.dirname, '../../designs/heron.json')

/** The example design as it is parsed, for a test to change. */
export const example = JSON.parse(readFileSync(examplePath, 'utf8'))

/** A folder for the files of one test file; it goes when the tests have run. */
export function testFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'fingerwright-command-'))
  afterAll(() => rmSync(folder, { recursive: true, force: true }))
  return folder
}
