import type { QuestionName, Told } from '../../report/index.ts'
import type { DesignStore } from './design-store.ts'
import type { DesignState, OpenDesign, Shown } from './open-design.ts'

/** What a question stands on: the design that is worked on, its evaluation as shown and as told in the reader's units. */
export interface OpenedQuestion {
  readonly store: DesignStore
  readonly state: DesignState
  readonly open: OpenDesign
  readonly shown: Shown
  readonly question: QuestionName
  readonly told: Told
}
