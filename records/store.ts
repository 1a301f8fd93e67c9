/** What a store holds and what can be asked of it. Times are ISO 8601 in UTC. */
import type { Problem, Splice, Verdict } from '../engine/index.ts'
import type { BenchBook } from './bench/bench-book.ts'

/** One step of the undo history: a change of the text and what it was, in a few words. */
export interface Step {
  readonly splice: Splice
  readonly said: string
}

/** A draft: the text that the history begins with, every step, and how many of them are done. */
export interface Draft {
  /** Grows with every save. */
  readonly version: number
  readonly base: string
  readonly steps: readonly Step[]
  readonly position: number
  /** The base with the first `position` steps done. */
  readonly text: string
  /** SHA-256 of the file that the draft was begun from or last agreed with; null when there was none. */
  readonly given: string | null
  readonly saved: string
}

/** What a revision is made of. Figures, findings and problems are JSON as the result document has them. */
export interface NewRevision {
  readonly text: string
  readonly engine: string
  readonly figures: string
  readonly findings: string
  readonly problems: string
  readonly who: string
  readonly why: string
}

/** A revision as it is kept: it never changes. */
export interface Revision extends NewRevision {
  /** From 1, without gaps. */
  readonly number: number
  readonly saved: string
}

/** A revision in a list. */
export interface RevisionEntry {
  readonly number: number
  readonly saved: string
  readonly who: string
  readonly why: string
  readonly engine: string
  /** Of each finding. */
  readonly verdicts: readonly Verdict[]
  /** How many problems showed when the finger was moved. */
  readonly problems: number
}

/** A design in the list of the store. */
export interface DesignEntry {
  readonly name: string
  readonly revisions: number
  readonly newest?: RevisionEntry
  readonly draft?: { readonly version: number; readonly saved: string }
}

/** Everything about one design: what is exported and brought in. */
export interface History {
  readonly name: string
  readonly revisions: readonly Revision[]
  readonly draft?: Draft
}

/** A change of a draft: the first `keep` stored steps stay, `steps` follow, `position` of them are done. */
export interface DraftChange {
  /** Of the draft that is changed; 0 when there is none. */
  readonly version: number
  readonly keep: number
  readonly steps: readonly Step[]
  readonly position: number
  /** The text that the history begins with, for a new draft or a new history. */
  readonly base: string
  /** The text of the file of this name as it is now; absent when there is none. */
  readonly given?: string
}

/** A save, or what stands in its way: another one was faster, or it does not fit. */
export type Saved<Kept> =
  | { readonly kept: Kept }
  | { readonly newer: { readonly version: number; readonly text: string } }
  | { readonly refused: Problem }

/** What came of a store that was brought in, one entry a design. */
export interface BroughtIn {
  readonly name: string
  /** `there`: nothing new in it. `further`: its later revisions or steps were added. `new`: came in as `as`. */
  readonly came: 'there' | 'further' | 'new'
  /** The name under which it is found now. */
  readonly as: string
  readonly revisions: number
  /** Lots and entries of the bench book that came with it; left out where there are none. */
  readonly lots?: number
  readonly entries?: number
}

/**
 * A store of designs. Every save is whole and on the disk when its function returns; what was saved is never overwritten.
 * Every function throws a `StoreFault` when the store cannot be read or written.
 */
export interface Store {
  /** Its file. */
  readonly file: string
  /** Why nothing can be saved, as a sentence; absent for a store in order. */
  readonly notKept?: string
  /** What happened when it was opened and ought to be told, in sentences. */
  readonly notes: readonly string[]
  /** In the order of their names. */
  readonly designs: () => readonly DesignEntry[]
  readonly draft: (name: string) => Draft | undefined
  /** Oldest first; empty for a name that is not in the store. */
  readonly revisions: (name: string) => readonly RevisionEntry[]
  /** One revision, or the newest; undefined when there is none. */
  readonly revision: (name: string, number: number | 'newest') => Revision | undefined
  readonly keepDraft: (name: string, change: DraftChange) => Saved<{ readonly version: number }>
  /**
   * @param version of the draft that was looked at; 0 when there was none, absent when the draft does not matter.
   *        A revision that is already there with the same words is not kept twice.
   */
  readonly keepRevision: (name: string, revision: NewRevision, version?: number) => Saved<{ readonly number: number }>
  /** Writes the whole store as one file, as it stands at this moment. An existing file is refused. */
  readonly copyTo: (file: string) => void
  /** Brings in a store that was written by `copyTo`, here or elsewhere. Nothing is overwritten. */
  readonly bringIn: (file: string) => readonly BroughtIn[]
  /** Lots, serial numbers, readings and what else is entered at the bench. */
  readonly bench: BenchBook
  readonly close: () => void
}
