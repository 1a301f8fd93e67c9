import { existsSync, statSync } from 'node:fs'
import { nearestName } from '../engine/index.ts'
import { revisionNumber, type Store, storeFile } from '../records/index.ts'
import { type DesignFile, readDesignFile } from './design-file.ts'
import { momentText } from './revision-text.ts'
import { storeFolder } from './store-folder.ts'
import { type Terminal, WrongUse } from './terminal.ts'
import { lookInStore } from './use-store.ts'

/** A design as it was named: a file, or a name in the store with a revision's number or `draft`. */
export interface DesignNamed {
  readonly path: string
  readonly revision?: string | undefined
  readonly store?: string | undefined
}

/**
 * Finds the design that was named: a file, else what the store has under this name. Of the store the newest revision is taken, or the
 * draft where there is none; which one is told on the error stream.
 *
 * @throws WrongUse when it is neither here nor there, with the name that was likely meant
 */
export async function findDesign({ path, revision, store }: DesignNamed, terminal: Terminal): Promise<DesignFile> {
  const isHere = existsSync(path) && !statSync(path).isDirectory()
  const isFile = path === '-' || isHere || /[\\/]|\.json$/i.test(path)
  if (revision === undefined && isFile) return readDesignFile(path, terminal)
  if (revision === undefined && !existsSync(storeFile(storeFolder(store, terminal)))) return readDesignFile(path, terminal)
  return findStored({ path, revision, store }, terminal)
}

/**
 * Finds a design in the store, as `findDesign` does where there is no file.
 *
 * @throws WrongUse when there is no store, or the name or the revision is not in it
 */
export async function findStored({ path, revision, store }: DesignNamed, terminal: Terminal): Promise<DesignFile> {
  const found = await lookInStore({ store, terminal }, (opened) => inStore(opened, { name: path, revision }))
  if (found.told !== undefined) terminal.writeError(`${found.told}\n`)
  return { bytes: Buffer.from(found.text), name: path, shown: found.shown, kept: path, revision: found.revision }
}

/** @throws WrongUse for a name that is not in the store, with the one that was likely meant */
export function refuseUnknown(store: Store, name: string): void {
  const names = store.designs().map((entry) => entry.name)
  if (names.includes(name)) return
  const nearest = nearestName(name, names)
  const meant = nearest === undefined ? 'fingerwright designs lists what is there' : `did you mean ${nearest}?`
  throw new WrongUse(`${name}: there is no such file, and no design of this name in ${store.file}; ${meant}`)
}

interface Wanted {
  readonly name: string
  readonly revision: string | undefined
}

interface FoundText {
  readonly text: string
  readonly shown: string
  /** Its number, or `draft`. */
  readonly revision: string
  /** Which one was taken, where it was not said. */
  readonly told?: string
}

function inStore(store: Store, { name, revision }: Wanted): FoundText {
  refuseUnknown(store, name)
  if (revision !== undefined && revision !== 'draft') return numbered(store, { name, revision })
  const draft = store.draft(name)
  const newest = revision === 'draft' ? undefined : store.revision(name, 'newest')
  if (newest === undefined) {
    if (draft === undefined) throw new WrongUse(`${name} has no draft; leave --revision out for its newest revision`)
    const told =
      revision === 'draft' ? {} : { told: `${name} has no revision yet: this is its draft, saved ${momentText(draft.saved)}.` }
    return { text: draft.text, shown: `${name}, draft`, revision: 'draft', ...told }
  }
  const more = draft === undefined || draft.text === newest.text ? '' : ' Its draft is another: --revision draft.'
  const told = `${name}: revision ${newest.number}, kept ${momentText(newest.saved)} by ${newest.who}.${more}`
  return { text: newest.text, shown: `${name}, revision ${newest.number}`, revision: String(newest.number), told }
}

function numbered(store: Store, { name, revision }: { readonly name: string; readonly revision: string }): FoundText {
  const number = revisionNumber.safeParse(revision)
  if (!number.success) throw new WrongUse(`--revision "${revision}": needs the number of a revision, or draft`)
  const found = store.revision(name, number.data)
  if (found !== undefined) return { text: found.text, shown: `${name}, revision ${found.number}`, revision: String(found.number) }
  const most = store.revision(name, 'newest')?.number ?? 0
  const there = most === 0 ? 'it has none yet' : most === 1 ? 'it has only revision 1' : `it has 1 to ${most}`
  throw new WrongUse(`${name} has no revision ${number.data}; ${there}`)
}
