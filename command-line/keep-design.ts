import { newName, who, why } from '../records/index.ts'
import { documentText, judgedRevision } from '../server/index.ts'
import { readDesignFile } from './design-file.ts'
import { type ExitStatus, exitStatus } from './exit-status.ts'
import { fitting } from './fitting.ts'
import { refusalText } from './refusal-text.ts'
import type { Terminal } from './terminal.ts'
import { saveInStore } from './use-store.ts'

/** A design file to be kept as a revision, as typed. */
export interface ToKeep {
  readonly path: string
  readonly who: string
  readonly why: string
  /** Name in the store; that of the file when it is left out. */
  readonly name?: string
  readonly store?: string
}

/**
 * Keeps a design file as a new revision in the store. A refused design is not kept; its problems are listed.
 *
 * @throws WrongUse when the file or the store cannot be used, or a word does not fit
 */
export async function keepDesign(asked: ToKeep, terminal: Terminal): Promise<ExitStatus> {
  const file = await readDesignFile(asked.path, terminal)
  const said = { who: fitting(who, ['--who', asked.who]), why: fitting(why, ['--why', asked.why]) }
  const name = fitting(newName, ['--name', asked.name ?? file.name])
  const text = documentText(file.bytes)
  const revision = text.problems === undefined ? judgedRevision({ name, text: text.value, ...said }) : text
  if (revision.problems !== undefined) {
    terminal.writeError(refusalText(file.shown, revision.problems))
    return exitStatus.refused
  }
  const kept = await saveInStore({ store: asked.store, terminal }, (store) => {
    const before = store.revision(name, 'newest')?.number
    const saved = store.keepRevision(name, revision.value)
    if (!('kept' in saved)) throw new Error('a revision that asks for no version of the draft cannot be overtaken')
    const { number } = saved.kept
    return `${name} ${number === before ? 'was already kept' : 'is kept'} as revision ${number} in ${store.file}.\n`
  })
  terminal.write(kept)
  return exitStatus.met
}
