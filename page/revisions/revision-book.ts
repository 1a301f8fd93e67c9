/** The list of revisions of the design that is open: one for the whole page, so that the column and the page say the same. */
import { useEffect, useSyncExternalStore } from 'react'
import { wordsOf } from '../state/server-words.ts'
import { fetchRevisions, type RevisionEntry } from './revision.ts'

/** What is known of the revisions of a design: the list newest first, or why it could not be had; neither while it is asked for. */
export interface Book {
  readonly name?: string
  readonly revisions?: readonly RevisionEntry[]
  readonly fault?: string
}

let book: Book = {}
const listeners = new Set<() => void>()

/** The revisions of a design that the server has; an empty book for one that it has not. */
export function useRevisionBook(name: string | undefined): Book {
  useEffect(() => {
    if (name !== book.name) openBook(name)
  }, [name])
  const known = useSyncExternalStore(subscribe, () => book)
  return known.name === name ? known : {}
}

/** Asks for the list anew: something was kept or brought in. */
export async function rereadBook(): Promise<void> {
  const { name } = book
  if (name === undefined) return
  try {
    const revisions = await fetchRevisions(name)
    if (book.name === name) set({ name, revisions })
  } catch (reason) {
    if (book.name === name) set({ ...book, fault: wordsOf(reason) })
  }
}

function openBook(name: string | undefined): void {
  set(name === undefined ? {} : { name })
  void rereadBook()
}

function set(next: Book): void {
  book = next
  for (const listener of listeners) listener()
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener)
  return () => listeners.delete(listener)
}
