/** An evaluation as somebody reads it: the same figures, said in the units that the reader chose. */
import type { Evaluation, Travel, UnitSystem } from '../../engine/index.ts'

/** A travel whose drive is read in the reader's units; metric when none are named. */
export interface ToldTravel extends Travel {
  readonly units?: UnitSystem
}

/** What sentences, tables, drawings and plots are made of; metric when no units are named. Nothing that is stored changes with them. */
export interface Told extends Evaluation {
  readonly units?: UnitSystem
  readonly travel?: ToldTravel
}

/** The evaluation for a reader of these units. */
export function toldIn(units: UnitSystem, evaluation: Evaluation): Told {
  const { travel } = evaluation
  return { ...evaluation, units, ...(travel === undefined ? {} : { travel: { ...travel, units } }) }
}
