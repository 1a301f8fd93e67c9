import { statSync } from 'node:fs'
import type { Database } from 'better-sqlite3'
import { designId, enteredDesign } from './design-id.ts'
import { designEntries, historyOf } from './designs.ts'
import { writeDraft } from './drafts.ts'
import { freeName } from './free-name.ts'
import { historyProblem } from './history-check.ts'
import { storeLimits } from './limits.ts'
import { loadCopy } from './load-copy.ts'
import { type Meeting, meeting } from './meeting.ts'
import type { Opening } from './open-database.ts'
import { addRevision } from './revisions.ts'
import type { BroughtIn, Draft, History } from './store.ts'
import { onFile, StoreFault } from './store-fault.ts'

/**
 * Every design of a store from elsewhere, read and checked before the first of them is written here.
 *
 * @throws StoreFault when the file is no store, damaged, too large, of a later version, or breaks a rule that every save here has kept
 */
export function historiesIn(opening: Opening): readonly History[] {
  const { file } = opening
  const size_bytes = onFile(file, () => statSync(file).size)
  if (size_bytes > storeLimits.storeBytes) {
    const needed = `at most ${storeLimits.storeBytes} bytes`
    throw new StoreFault(file, { code: 'store too large', place: '', found: `${size_bytes} bytes`, needed })
  }
  const loaded = loadCopy(opening)
  const histories = onFile(file, () => designEntries(loaded).map(({ name }) => historyOf(loaded, name)))
  loaded.close()
  for (const history of histories) {
    const problem = historyProblem(history)
    if (problem !== undefined) throw new StoreFault(file, problem)
  }
  return histories
}

/**
 * Adds a design from elsewhere, within a transaction of the caller. Where the design of this name has parted from it, it comes in
 * under a free name; nothing is overwritten.
 */
export function bringIn(database: Database, other: History): BroughtIn {
  const here = historyOf(database, other.name)
  const isThere = here.revisions.length > 0 || here.draft !== undefined
  const met: Meeting = isThere ? meeting(here, other) : 'goes on'
  const as = met === 'another design' ? freeName(other.name, (name) => designId(database, name) !== undefined) : other.name
  const added = met === 'nothing new' ? [] : other.revisions.slice(as === other.name ? here.revisions.length : 0)
  for (const { number: _, saved, ...revision } of added) addRevision(database, { name: as, revision, saved })
  if (met !== 'nothing new' && other.draft !== undefined) {
    const version = as === other.name ? Math.max(here.draft?.version ?? 0, other.draft.version) + 1 : other.draft.version
    putDraft(database, as, { ...other.draft, version })
  }
  return { name: other.name, as, revisions: added.length, came: cameAs(met, isThere) }
}

function putDraft(database: Database, name: string, draft: Draft): void {
  writeDraft(database, { design: enteredDesign(database, { name, made: draft.saved }), keep: 0, draft })
}

function cameAs(met: Meeting, isThere: boolean): BroughtIn['came'] {
  if (met === 'nothing new') return 'there'
  return isThere && met === 'goes on' ? 'further' : 'new'
}
