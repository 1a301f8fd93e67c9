/** What the page knows of the design that is worked on. */
import type { Change, Evaluation, Problem } from '../../engine/index.ts'
import type { History } from './history.ts'
import type { Keeping } from './kept-work.ts'
import type { Picture } from './picture.ts'

/** A text that could not be shown; the design before it stays. */
export interface Refused {
  readonly name: string
  readonly problems: readonly Problem[]
  /** The text came about on this page, so that undoing mends it. */
  readonly isEdit: boolean
}

/** The design that is worked on. */
export interface OpenDesign {
  readonly name: string
  /** Another number each time a design is opened: drawings are laid out once for it. */
  readonly opening: number
  readonly history: History
  readonly keeping: Keeping
  /** The file that the server was given has changed since the work on it began. */
  readonly givenChanged: boolean
}

/** Whether the server has this design under its name: one from disk may be called like another. */
export function isKeptHere({ keeping }: OpenDesign): boolean {
  return keeping.kind !== 'from disk'
}

/** What the page shows of a design. */
export interface Shown {
  readonly name: string
  readonly opening: number
  readonly text: string
  readonly evaluation: Evaluation
  /** As it stood before what was done last; absent while nothing was done. */
  readonly before?: Evaluation
}

/** A finger that can be moved, and what was asked to be drawn of it. */
export interface Drawn {
  readonly evaluation: Evaluation
  readonly picture?: Picture
}

/** Everything that is known at one time. */
export interface DesignState {
  /** Designs that the server has. */
  readonly names: readonly string[]
  readonly open?: OpenDesign
  readonly shown?: Shown
  /** The last evaluation that could be moved: it is drawn while an edit cannot close. */
  readonly drawn?: Drawn
  readonly refused?: Refused
  readonly unreachable?: string
}

/** A change of values, what it is in words, and the gesture that it belongs to: all of a gesture is one step. */
export interface Edit {
  readonly changes: readonly Change[]
  readonly said: string
  readonly gesture?: object
}
