/** What would be added to the design if somebody said so: the drawing shows it dashed until then. */
import type { Design } from '../../engine/index.ts'
import { sharedState, useShared } from './shared-state.ts'

const proposed = sharedState<Design | undefined>(undefined)

/** Shows a design that has something more, or none. */
export function propose(design: Design | undefined): void {
  proposed.set(design)
}

/** The design as it would be; absent while nothing is proposed. */
export function useProposal(): Design | undefined {
  return useShared(proposed)
}
