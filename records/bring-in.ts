import { statSync } from 'node:fs'
import type { Database } from 'better-sqlite3'
import { bookProblem } from './bench/book-check.ts'
import { type BookRow, bookRows } from './bench/book-rows.ts'
import { type BookNews, mergeBook } from './bench/merge-book.ts'
import { designId, enteredDesign } from './design-id.ts'
import { designEntries, historyOf } from './designs.ts'
import { writeDraft } from './drafts.ts'
import { freeName } from './free-name.ts'
import { historyProblem, misfit } from './history-check.ts'
import { storeLimits } from './limits.ts'
import { loadCopy } from './load-copy.ts'
import type { Opening } from './open-database.ts'
import { addRevision } from './revisions.ts'
import { RuleBroken, unlessRuleBroken } from './rule-broken.ts'
import type { BroughtIn, Draft, History } from './store.ts'
import { onFile, StoreFault } from './store-fault.ts'
import { type News, whatIsNew } from './what-is-new.ts'

/** A design from elsewhere: its history, and its bench book. */
export interface Elsewhere extends History {
  readonly book: readonly BookRow[]
}

/**
 * Every design of a store from elsewhere, read and checked before the first of them is written here.
 *
 * @throws StoreFault when the file is no store, damaged, too large, of a later version, or breaks a rule that every save here has kept
 */
export function historiesIn(opening: Opening): readonly Elsewhere[] {
  const { file } = opening
  const size_bytes = onFile(file, () => statSync(file).size)
  if (size_bytes > storeLimits.storeBytes) {
    const needed = `at most ${storeLimits.storeBytes} bytes`
    throw new StoreFault(file, { code: 'store too large', place: '', found: `${size_bytes} bytes`, needed })
  }
  const loaded = loadCopy(opening)
  const histories = onFile(file, () =>
    designEntries(loaded).map(({ name }) => ({
      ...historyOf(loaded, name),
      book: bookRows(loaded, designId(loaded, name) ?? 0),
    })),
  )
  loaded.close()
  for (const { book, ...history } of histories) {
    const inBook = bookProblem(book)
    const problem = historyProblem(history) ?? (inBook && misfit(`${history.name} › ${inBook.place}`, inBook.found))
    if (problem !== undefined) throw new StoreFault(file, problem)
  }
  return histories
}

/**
 * Adds a design from elsewhere with its bench book, within a transaction of the caller. Where the design of this name has parted from it, it comes in
 * under a free name, unless one that came in so has all of it already; nothing is overwritten.
 *
 * @throws StoreFault when its bench book does not hang together
 */
export function bringIn(database: Database, { other, file }: { readonly other: Elsewhere; readonly file: string }): BroughtIn {
  const { name } = other
  const isThere = designId(database, name) !== undefined
  const inPlace = addedTo(database, { as: name, other })
  if (inPlace !== undefined) return told(inPlace, { name, as: name, isThere })
  const isAnother = (tried: string): boolean =>
    designId(database, tried) !== undefined && (tried === name || !holdsAll(database, { as: tried, other }))
  const as = freeName(name, isAnother)
  const beside = addedTo(database, { as, other })
  if (beside !== undefined) return told(beside, { name, as, isThere: false })
  throw new StoreFault(file, misfit(`${name} › bench book`, 'entries that do not belong together'))
}

interface Target {
  readonly as: string
  readonly other: Elsewhere
}

interface Added extends BookNews {
  readonly revisions: number
  readonly isNothing: boolean
}

function told(
  { revisions, lots, entries, isNothing }: Added,
  { isThere, ...names }: { readonly name: string; readonly as: string; readonly isThere: boolean },
): BroughtIn {
  const came = isNothing ? 'there' : isThere ? 'further' : 'new'
  return { ...names, came, revisions, ...(lots > 0 && { lots }), ...(entries > 0 && { entries }) }
}

/** Adds what is new to a design of this name. @returns undefined where the two have parted; then nothing was added */
function addedTo(database: Database, { as, other }: Target): Added | undefined {
  const here = historyOf(database, as)
  const news = whatIsNew(here, other)
  if (news === undefined) return undefined
  return unlessRuleBroken(database, () => {
    const { revisions, draft }: News = news
    for (const { number: _, saved, ...revision } of revisions) addRevision(database, { name: as, revision, saved })
    if (draft !== undefined) putDraft(database, as, after(here.draft, draft))
    const design = designId(database, as)
    const book = design === undefined ? undefined : mergeBook(database, { design, rows: other.book })
    const { rows = 0, lots = 0, entries = 0 } = book ?? {}
    const isNothing = revisions.length === 0 && draft === undefined && rows === 0
    return { rows, lots, entries, revisions: revisions.length, isNothing }
  })
}

/** Whether a design has all of the other, so that it came in before. It is tried and taken back. */
function holdsAll(database: Database, target: Target): boolean {
  let isAll = false
  unlessRuleBroken(database, () => {
    isAll = addedTo(database, target)?.isNothing === true
    throw new RuleBroken()
  })
  return isAll
}

/** A draft in the place of one that it goes on from: a page that shows the earlier one must see that it is not the newest. */
function after(here: Draft | undefined, other: Draft): Draft {
  return here === undefined ? other : { ...other, version: Math.max(here.version, other.version) + 1 }
}

function putDraft(database: Database, name: string, draft: Draft): void {
  writeDraft(database, { design: enteredDesign(database, { name, made: draft.saved }), keep: 0, draft })
}
