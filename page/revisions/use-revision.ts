import { useEffect, useState } from 'react'
import { wordsOf } from '../state/server-words.ts'
import { fetchRevision, type Revision, type RevisionName } from './revision.ts'

/** A revision, or why it could not be had; neither while it is asked for, or when none is asked for. */
export interface FetchedRevision {
  readonly revision?: Revision
  readonly fault?: string
}

/** One revision of a design. */
export function useRevision(name: string, number: number | undefined): FetchedRevision {
  const [found, setFound] = useState<FetchedRevision & Partial<RevisionName>>({})
  useEffect(() => {
    if (number === undefined) return
    let isWanted = true
    const take = (answer: FetchedRevision): void => {
      if (isWanted) setFound({ name, number, ...answer })
    }
    fetchRevision({ name, number }).then(
      (revision) => take({ revision }),
      (reason: unknown) => take({ fault: wordsOf(reason) }),
    )
    return () => {
      isWanted = false
    }
  }, [name, number])
  return found.name === name && found.number === number ? found : {}
}
