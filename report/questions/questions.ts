import { holdSentence } from '../sentences/hold-sentence.ts'
import { motionSentence } from '../sentences/motion-sentence.ts'
import { strengthSentence } from '../sentences/strength-sentence.ts'
import type { Told } from '../tables/told.ts'
import type { QuestionName } from './question-of.ts'

/** A question that an evaluation answers: how every door names it, what it asks, and its answer in one plain sentence. */
export interface Question {
  readonly name: QuestionName
  readonly word: string
  readonly asks: string
  readonly sentence: (evaluation: Told) => string
}

/** In the order in which they are asked. */
export const questions: readonly Question[] = [
  { name: 'motion', word: 'Motion', asks: 'Does the finger close where it should?', sentence: motionSentence },
  { name: 'hold', word: 'Hold', asks: 'Does it hold the load, and does it let go afterwards?', sentence: holdSentence },
  { name: 'strength', word: 'Strength', asks: 'What gives first, and does it bear its loads?', sentence: strengthSentence },
]

/** The question of a name. */
export function questionNamed(name: QuestionName): Question {
  const found = questions.find((question) => question.name === name)
  if (found === undefined) throw new Error(`there is no question ${name}`)
  return found
}
