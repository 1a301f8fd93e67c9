/** Keeps what stands on the page as a revision, and nothing else: what the server has must be what is seen here. */
import type { DesignStore } from '../state/design-store.ts'
import { fetchWork } from '../state/kept-work.ts'
import type { OpenDesign } from '../state/open-design.ts'
import { reasonOf } from '../state/server-words.ts'
import { addressOf } from './revision.ts'

/** Who says that a revision is to be kept, and why. */
export interface Said {
  readonly who: string
  readonly why: string
}

const ELSEWHERE = 'it was changed on another page meanwhile; choose which one stands, then keep it'

/**
 * Keeps the design that is open as its next revision, once all that was done to it is saved.
 *
 * @returns its number
 * @throws Error in words when it is not kept
 */
export async function keepRevision(store: DesignStore, said: Said): Promise<number> {
  const { name, history, keeping } = await atRest(store)
  if (keeping.kind === 'other page') throw new Error(ELSEWHERE)
  if (keeping.kind === 'not kept') throw new Error(keeping.why)
  const work = await fetchWork(name)
  if (work.history.text !== history.text) throw new Error(ELSEWHERE)
  const body = JSON.stringify({ version: work.version, ...said })
  const response = await fetch(addressOf(name), { method: 'POST', headers: { 'Content-Type': 'application/json' }, body })
  if (!response.ok) throw new Error(await reasonOf(response))
  const { number } = (await response.json()) as { readonly number: number }
  return number
}

/** The design that is open, when no save of it is under way any more. */
function atRest(store: DesignStore): Promise<OpenDesign> {
  return new Promise((resolve) => {
    const look = (): boolean => {
      const { open } = store.shared.now()
      if (open === undefined || open.keeping.kind === 'waiting') return false
      resolve(open)
      return true
    }
    if (look()) return
    const stop = store.shared.subscribe(() => {
      if (look()) stop()
    })
  })
}
