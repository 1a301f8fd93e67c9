/** What the page and its worker say to each other. */
import type { Evaluation, Problem } from '../../engine/index.ts'

/** A design to be read and evaluated. Numbers grow, so that late answers are known. */
export interface Request {
  readonly id: number
  readonly name: string
  /** As it is in the file. */
  readonly fileText: string
  /** As it stands after pins were dragged. */
  readonly text: string
}

/** Either an evaluation or every problem of the file. */
export type Answer =
  | { readonly id: number; readonly evaluation: Evaluation; readonly problems?: never }
  | { readonly id: number; readonly evaluation?: never; readonly problems: readonly Problem[] }
