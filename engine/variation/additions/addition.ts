import type { Change } from '../../design/edit/change.ts'
import type { Field } from '../../design/edit/field.ts'
import type { AdditionKind } from '../../design/edit/section-heads.ts'
import type { Checked } from '../../design/problem.ts'

/** Something that has to be known before a thing can be added, with a first value that will do. */
export interface Ask {
  readonly id: string
  readonly label: string
  readonly kind: Field['kind']
  readonly typed: string
  readonly choices?: readonly string[]
  /** What is expected, in words. */
  readonly needed: string
}

/** What was typed for the asks of an addition, by their ids; what is left out stands for the first value. */
export type Inputs = Readonly<Record<string, string>>

/** A thing that can be added to a document, so that it can be drawn before it is done. */
export interface Addition {
  readonly kind: AdditionKind
  readonly title: string
  readonly asks: readonly Ask[]
  /**
   * The changes that add it. The quantities are put in as typed, so that reading the changed document says what is wrong with them;
   * only what has to be calculated here is a problem here, with the id of its ask as place.
   */
  readonly propose: (inputs: Inputs) => Checked<readonly Change[]>
}
