/** What hands do to the drawing: look at a thing, or move it. */
import type { Change } from '../../engine/index.ts'
import type { Grip, GripRow } from '../../report/index.ts'

/** What was touched last, with the rows that say more about it. */
export interface Touched {
  readonly says: string
  readonly rows: readonly GripRow[]
  readonly note?: string
}

/** A move of a grip. All moves of one gesture are one step of the history. */
export interface Move {
  readonly grip: Grip
  readonly changes: readonly Change[]
  readonly gesture: object
}

/** What the drawing reports. */
export interface Grasp {
  readonly touch: (touched: Touched) => void
  readonly move: (move: Move) => void
}
