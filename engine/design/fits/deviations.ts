import type { Problem } from '../problem.ts'

/** How far a size may lie from its nominal. */
export interface Deviations {
  readonly lower_mm: number
  readonly upper_mm: number
}

/** Why a table has no such zone; the reader adds the place. */
export type ZoneFault = Pick<Problem, 'code' | 'found' | 'needed' | 'wayOut'>

/** Deviations that a table gives, or why it gives none. */
export type ZoneRead =
  | { readonly deviations: Deviations; readonly fault?: never }
  | { readonly deviations?: never; readonly fault: ZoneFault }
