/** What would be added to the design if somebody said so: the drawing shows it dashed until then. */
import { useSyncExternalStore } from 'react'
import type { Design } from '../../engine/index.ts'

const listeners = new Set<() => void>()
let proposed: Design | undefined

/** Shows a design that has something more, or none. */
export function propose(design: Design | undefined): void {
  proposed = design
  for (const listener of listeners) listener()
}

/** The design as it would be; absent while nothing is proposed. */
export function useProposal(): Design | undefined {
  return useSyncExternalStore(subscribe, () => proposed)
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener)
  return () => listeners.delete(listener)
}
