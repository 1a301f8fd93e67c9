/** The bench book of the design that is open, as far as its proof rests on it: one for the whole page. */
import { useEffect } from 'react'
import type { BookAsKept } from '../../engine/index.ts'
import { benchOf } from '../check/bench/bench.ts'
import { reasonOf, wordsOf } from '../state/server-words.ts'
import { sharedState, useShared } from '../state/shared-state.ts'

/** What is known: the book, or why it could not be had; neither while it is asked for, and for a design that is kept nowhere. */
export interface KnownBook {
  readonly name?: string
  readonly book?: BookAsKept
  readonly fault?: string
}

const shared = sharedState<KnownBook>({})

/** @param name of a design that the server has; undefined for one that it has not */
export function useKeptBook(name: string | undefined): KnownBook {
  useEffect(() => {
    if (name !== shared.now().name) {
      shared.set(name === undefined ? {} : { name })
      void rereadKeptBook()
    }
  }, [name])
  const known = useShared(shared)
  return known.name === name ? known : {}
}

/** Asks anew: something was entered. */
export async function rereadKeptBook(): Promise<void> {
  const { name } = shared.now()
  if (name === undefined) return
  const found = await fetchBook(name).then(
    (book) => ({ name, book }),
    (reason) => ({ ...shared.now(), fault: wordsOf(reason) }),
  )
  if (shared.now().name === name) shared.set(found)
}

async function fetchBook(name: string): Promise<BookAsKept> {
  const response = await fetch(`${benchOf(name)}/proving`)
  if (!response.ok) throw new Error(await reasonOf(response))
  return (await response.json()) as BookAsKept
}
