import { readdirSync, readFileSync } from 'node:fs'
import { documentText } from '../../test-support/full-document.ts'

const folder = new URL('../../../../designs/', import.meta.url)
const files = readdirSync(folder).filter((file) => file.endsWith('.json'))

/** Texts of the example designs by name, and of a document that uses every section. */
export const exampleTexts: ReadonlyMap<string, string> = new Map([
  ...files.map((file): [string, string] => [file.replace('.json', ''), readFileSync(new URL(file, folder), 'utf8')]),
  ['crane', documentText({})],
])

/** Text of an example design. */
export function exampleText(name: string): string {
  const text = exampleTexts.get(name)
  if (text === undefined) throw new Error(`no example ${name}`)
  return text
}
