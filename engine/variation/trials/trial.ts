import type { Change } from '../../design/edit/change.ts'
import type { Desk } from '../../design/edit/desk.ts'
import type { Evaluation } from '../../figures/evaluation.ts'

/** A document and what its evaluation says, on which something is tried out. */
export interface TrialGround {
  readonly desk: Desk
  readonly evaluation: Evaluation
}

/** What a trial changes and why, with its numbers and where they come from; or why it cannot be tried on this design. */
export type Tried =
  | { readonly says: string; readonly changes: readonly Change[]; readonly cannot?: never }
  | { readonly cannot: string; readonly changes?: never }

/** A trial that stands ready. Its changes are those of any edit: they give an ordinary document and are undone like typing. */
export type Trial = { readonly id: string; readonly title: string } & Tried
