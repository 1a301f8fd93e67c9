/** What would be added to the design if somebody said so: the drawing shows it until then. */
import type { Design } from '../../engine/index.ts'
import { sharedState, useShared } from './shared-state.ts'

/** A design that has something more, with its text. */
export interface Proposal {
  readonly design: Design
  readonly text: string
}

const proposed = sharedState<Proposal | undefined>(undefined)

/** Shows a design that has something more, or none. */
export function propose(proposal: Proposal | undefined): void {
  proposed.set(proposal)
}

/** The design as it would be; absent while nothing is proposed. */
export function useProposal(): Proposal | undefined {
  return useShared(proposed)
}
