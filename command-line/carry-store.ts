import { resolve } from 'node:path'
import type { BroughtIn } from '../records/index.ts'
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
  asked.terminal.write(`${path} holds the whole store: ${designs} with every revision and draft.
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

function designText({ lots = 0, ...design }: BroughtIn): string {
  const behind = lots === 0 ? '' : `; ${lots === 1 ? 'its lot' : `its ${lots} lots`} with all readings stay in the file`
  return `${broughtInText(design)}${behind}`
}

function broughtInText({ name, came, as, revisions }: BroughtIn): string {
  const count = revisions === 1 ? 'one revision' : `${revisions} revisions`
  if (came === 'there') return `${name}: nothing new`
  if (came === 'further') return `${name}: goes on, ${revisions === 0 ? 'with a later draft' : `with ${count} more`}`
  const beside = as === name ? '' : `; the ${name} here is another and is left as it is`
  return `${as}: new, ${revisions === 0 ? 'a draft' : count}${beside}`
}
