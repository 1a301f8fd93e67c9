import type { Checked } from '../engine/index.ts'
import type { NewRevision } from '../records/index.ts'
import { answerDesign } from './answer.ts'
import { engineName } from './engine-name.ts'

/** A text that is to be kept, and who says why. */
export interface ToBeKept {
  readonly name: string
  readonly text: string
  readonly who: string
  readonly why: string
}

/** A revision with what the engine of today says of it, or every problem that refuses the design. */
export function judgedRevision({ name, text, who, why }: ToBeKept): Checked<NewRevision> {
  const answer = answerDesign(new TextEncoder().encode(text), name)
  if (answer.evaluation === undefined) return { problems: answer.problems }
  const { figures, findings, problems } = answer.document
  const results = {
    figures: JSON.stringify(figures),
    findings: JSON.stringify(findings),
    problems: JSON.stringify(problems),
  }
  return { value: { text, engine: engineName, ...results, who, why } }
}
