/** Which forces the drawing shows, in plain words. */
import type { Design, Question } from '../../engine/index.ts'

/** A question about forces with the words that choose it. */
export interface ForceChoice {
  readonly question: Question
  readonly words: string
}

/** The return first, then every load. */
export function forceChoices(design: Design): readonly ForceChoice[] {
  return [
    { question: { kind: 'return' }, words: 'Letting go by its springs' },
    ...design.loadCases.map((loadCase) => ({ question: { kind: 'hold' as const, loadCase: loadCase.id }, words: loadCase.name })),
  ]
}

/** Whether two questions ask about the same load. */
export function sameLoad(one: Question, other: Question): boolean {
  if (one.kind === 'return' || other.kind === 'return') return one.kind === other.kind
  return one.loadCase === other.loadCase
}
