import { statSync } from 'node:fs'
import type { Database } from 'better-sqlite3'
import { designId, enteredDesign } from './design-id.ts'
import { designEntries, historyOf } from './designs.ts'
import { writeDraft } from './drafts.ts'
import { freeName } from './free-name.ts'
import { historyProblem } from './history-check.ts'
import { storeLimits } from './limits.ts'
import { loadCopy } from './load-copy.ts'
import type { Opening } from './open-database.ts'
import { addRevision } from './revisions.ts'
import type { BroughtIn, Draft, History } from './store.ts'
import { onFile, StoreFault } from './store-fault.ts'
import { type News, whatIsNew } from './what-is-new.ts'

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
  const isThere = designId(database, other.name) !== undefined
  const found = whatIsNew(here, other)
  const as = found === undefined ? freeName(other.name, (name) => designId(database, name) !== undefined) : other.name
  const { revisions, draft }: News = found ?? other
  for (const { number: _, saved, ...revision } of revisions) addRevision(database, { name: as, revision, saved })
  if (draft !== undefined) putDraft(database, as, found === undefined ? draft : after(here.draft, draft))
  const isNothing = revisions.length === 0 && draft === undefined
  const came = isNothing ? 'there' : isThere && found !== undefined ? 'further' : 'new'
  return { name: other.name, came, as, revisions: revisions.length, ...(other.lots !== undefined && { lots: other.lots }) }
}

/** A draft in the place of one that it goes on from: a page that shows the earlier one must see that it is not the newest. */
function after(here: Draft | undefined, other: Draft): Draft {
  return here === undefined ? other : { ...other, version: Math.max(here.version, other.version) + 1 }
}

function putDraft(database: Database, name: string, draft: Draft): void {
  writeDraft(database, { design: enteredDesign(database, { name, made: draft.saved }), keep: 0, draft })
}
