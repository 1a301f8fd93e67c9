/** Forces that are to be drawn in a view, and what is drawn of them. */
import type { Design, ForcePicture, Question, UnitSystem } from '../../engine/index.ts'
import type { Label, Rectangle } from './labels.ts'
import type { Shape } from './svg.ts'
import type { View } from './view.ts'

/** Drawn forces with the labels that belong to them and the places they take. */
export interface DrawnForces {
  readonly shapes: readonly Shape[]
  readonly labels: readonly Label[]
  readonly obstacles: readonly Rectangle[]
}

/** Forces of a picture in a view. */
export interface ForcesOnSheet {
  readonly design: Design
  readonly forces: ForcePicture
  readonly view: View
  readonly units: UnitSystem
  /** What the forces were asked for; it tells where the effort acts. */
  readonly question?: Question
}
