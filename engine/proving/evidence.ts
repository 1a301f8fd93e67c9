import type { Evaluation } from '../figures/evaluation.ts'
import type { DesignSpread } from '../variation/spread/design-spread.ts'
import type { Lived } from '../variation/wear/life-of.ts'
import type { Book } from './book.ts'

/** What is known of a design: its evaluation, and what was counted and worked through of the same document. */
export interface Evidence {
  readonly evaluation: Evaluation
  /** Absent until it has been counted. */
  readonly spread?: DesignSpread
  /** Its life as it wears, or what the document would have to state first; absent until it is worked through. */
  readonly lived?: Lived
  /** What stands of the bench book; absent where the design is kept nowhere. */
  readonly book?: Book
}
