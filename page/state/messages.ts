/** What the page and its worker say to each other. */
import type { Evaluation, Problem } from '../../engine/index.ts'
import type { Picture, Pictured } from './picture.ts'

/** A design to be read and evaluated. Numbers grow, so that late answers are known. */
export interface Request {
  readonly id: number
  readonly name: string
  /** Which opening of a design it belongs to. */
  readonly opening: number
  readonly text: string
  /** What will be drawn of it; absent where nothing is. */
  readonly pictured?: Pictured
}

/** Either an evaluation, with its picture where one was asked for, or every problem of the file. */
export type Answer =
  | { readonly id: number; readonly evaluation: Evaluation; readonly picture?: Picture; readonly problems?: never }
  | { readonly id: number; readonly evaluation?: never; readonly picture?: never; readonly problems: readonly Problem[] }
