import { readFile, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { readDesign } from '../engine/index.ts'
import { designName } from '../server/index.ts'
import { asWrongUse } from './design-file.ts'
import { type Terminal, WrongUse } from './terminal.ts'

/** The example that a new design is a copy of. */
const TEMPLATE = 'designs/heron.json'

const NOTE =
  'A design to begin with: a copy of the example, an invented finger. Change one value at a time and ask for the verdict again. ' +
  'Lengths, forces and angles carry their unit ("44 mm", "1/4 in", "10 lbf", "7 deg"); a value may be an expression over the names under dimensions. ' +
  'Each requirement says why it is there; write your own reasons and sources.'

/**
 * Writes a copy of the example under a title of its own, and says what to do with it.
 *
 * @throws WrongUse when the file exists or cannot be written
 */
export async function writeNewDesign(path: string, terminal: Terminal): Promise<void> {
  const text = retitled(await readFile(join(terminal.home, TEMPLATE), 'utf8'), designName(path))
  const checked = readDesign(text)
  if (checked.problems !== undefined) throw new Error(`the new design is refused: ${JSON.stringify(checked.problems)}`)
  if (!path.toLowerCase().endsWith('.json')) throw new WrongUse(`${path}: give the file a name that ends in .json`)
  try {
    await writeFile(path, text, { flag: 'wx' })
  } catch (error) {
    throw asWrongUse(error, path)
  }
  terminal.write(`${path} is written. Look at it in an editor, then ask:\n  fingerwright verdict ${quoted(path)}\n`)
}

/** The same text with another title and note; everything else keeps its layout. */
function retitled(text: string, title: string): string {
  return replaceEntry(replaceEntry(text, 'title', title), 'note', NOTE)
}

/** Replaces the first string entry of this key: the document's own keys come before those of its parts. */
function replaceEntry(text: string, key: string, value: string): string {
  const entry = new RegExp(`("${key}"\\s*:\\s*)"(?:[^"\\\\]|\\\\.)*"`)
  if (!entry.test(text)) throw new Error(`the example has no ${key}`)
  return text.replace(entry, (_whole, start: string) => `${start}${JSON.stringify(value)}`)
}

/** As a shell takes it for one word. */
function quoted(path: string): string {
  return /^[\w./-]+$/.test(path) ? path : `'${path.replaceAll("'", "'\\''")}'`
}
