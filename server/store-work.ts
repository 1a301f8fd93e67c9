import type { Problem } from '../engine/index.ts'
import { type Draft, digest, type Store } from '../records/index.ts'
import type { DesignShelf } from './design-shelf.ts'
import { documentText } from './document-text.ts'

/** What the routes of the store look into: files the server was given, and what was saved. */
export interface Kept {
  readonly shelf: DesignShelf
  readonly store: Store
}

/** The draft of a design as it stands, or as it would begin. */
export interface Work extends Omit<Draft, 'given' | 'saved'> {
  readonly name: string
  /** Whether the file of this name was changed since the draft began or last agreed with it. */
  readonly givenChanged: boolean
}

/** A design that is known: its work, and the file of its name. */
export interface KnownWork {
  readonly work: Work
  /** Text of the file that the server was given; absent when there is none. */
  readonly given?: string
}

/**
 * Looks a design up: its draft, else its newest revision, else the file that the server was given.
 *
 * @returns undefined for a name that nothing is known of; problems when all there is is a file that is no text
 */
export async function workOn(
  name: string,
  { shelf, store }: Kept,
): Promise<KnownWork | { readonly problems: readonly Problem[] } | undefined> {
  const bytes = await shelf.read(name)
  const file = bytes === undefined ? undefined : documentText(bytes)
  const given = file?.value
  const draft = store.draft(name)
  if (draft !== undefined) {
    const { given: begun, saved: _, ...rest } = draft
    const givenChanged = given !== undefined && given !== draft.text && digest(given) !== begun
    return { work: { name, ...rest, givenChanged }, ...fileText(given) }
  }
  const newest = store.revision(name, 'newest')?.text
  const start = newest ?? given
  if (start === undefined) return file?.problems === undefined ? undefined : { problems: file.problems }
  const givenChanged = given !== undefined && given !== start
  return { work: { name, version: 0, base: start, steps: [], position: 0, text: start, givenChanged }, ...fileText(given) }
}

function fileText(given: string | undefined): { readonly given?: string } {
  return given === undefined ? {} : { given }
}
