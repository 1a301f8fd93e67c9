import { useState } from 'react'
import { wordsOf } from '../state/server-words.ts'

/** How a deed that takes a while stands: under way, done, or not done and why; nothing before the first. */
export interface DeedState {
  readonly doing?: string
  readonly done?: string
  readonly fault?: string
}

/** One deed at a time, of which the page says in place what became of it. */
export interface Deed extends DeedState {
  /** @param deed returns what was done, in words; what it throws is told */
  readonly run: (doing: string, deed: () => Promise<string>) => Promise<void>
}

/** A place on the page where something is done. */
export function useDeed(): Deed {
  const [state, setState] = useState<DeedState>({})
  const run = async (doing: string, deed: () => Promise<string>): Promise<void> => {
    setState({ doing })
    try {
      setState({ done: await deed() })
    } catch (reason) {
      setState({ fault: wordsOf(reason) })
    }
  }
  return { ...state, run }
}
