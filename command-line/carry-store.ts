import { resolve } from 'node:path'
import type { BroughtIn } from '../records/index.ts'
import { cameAlong } from '../report/index.ts'
import { lookInStore, type StoreAsked, saveInStore } from './use-store.ts'

/**
 * Writes the whole store as one file.
 *
 * @throws WrongUse when there is no store, or the file exists or cannot be written
 */
export async function exportStore(path: string, asked: StoreAsked): Promise<void> {
  const count = await lookInStore(asked, (store) => {
    store.copyTo(resolve(path))
    return store.designs().length
  })
  const designs = count === 1 ? 'one design' : `${count} designs`
  asked.terminal.write(`${path} holds the whole store: ${designs} with every revision and draft, and the bench book.
On another machine: fingerwright import-store ${path}\n`)
}

/**
 * Brings in a store that was written by `exportStore`. Nothing is overwritten; what became of each design is printed.
 *
 * @throws WrongUse when the file is no store or breaks a rule; then nothing was brought in
 */
export async function importStore(path: string, asked: StoreAsked): Promise<void> {
  const designs = await saveInStore(asked, (store) => store.bringIn(resolve(path)))
  const lines = designs.map((design) => `  ${designText(design)}\n`)
  asked.terminal.write(designs.length === 0 ? `There is no design in ${path}.\n` : lines.join(''))
}

function designText({ name, came, as, ...more }: BroughtIn): string {
  const along = cameAlong(more)
  if (came === 'there') return as === name ? `${name}: nothing new` : `${name}: nothing new; it came in as ${as} before`
  if (came === 'further') return `${name}: goes on; ${along === '' ? 'a later draft' : along} came to it`
  const beside = as === name ? '' : `; the ${name} here is another and is left as it is`
  return `${as}: new, ${along === '' ? 'a draft' : along}${beside}`
}
