import type { Evaluation, Problem } from '../../engine/index.ts'
import type { QuestionName } from './question-of.ts'

/** What stands in the way of an answer: the finger's own faults, and of a question what it asks of the document beyond them. */
export function problemsAsked({ problems, strength }: Evaluation, question: QuestionName | 'verdict'): readonly Problem[] {
  return question === 'strength' ? [...problems, ...(strength?.refused ?? [])] : problems
}
