import type { Evaluation } from '../figures/evaluation.ts'
import type { DesignSpread } from '../variation/spread/design-spread.ts'

/** What is known of a design: its evaluation, and the sets that were counted of the same document. */
export interface Evidence {
  readonly evaluation: Evaluation
  /** Absent until it has been counted. */
  readonly spread?: DesignSpread
}
