import { type Evaluation, evaluate, type Problem, readDesign } from '../engine/index.ts'
import { type ResultDocument, refusedDocument, resultDocument } from '../report/index.ts'
import { documentText } from './document-text.ts'
import { engineName } from './engine-name.ts'

/** What every door answers to a design file: the evaluation, or the problems that refuse it, and the document that says either. */
export type DesignAnswer =
  | { readonly evaluation: Evaluation; readonly document: ResultDocument }
  | { readonly evaluation?: never; readonly problems: readonly Problem[]; readonly document: ResultDocument }

/**
 * Reads and evaluates one design file. The one road behind the command line and the server.
 *
 * @param bytes the file as it is stored
 * @param name what the design is called, without folder and ending
 */
export function answerDesign(bytes: Uint8Array, name: string): DesignAnswer {
  const text = documentText(bytes)
  if (text.problems !== undefined) return refused(name, text.problems)
  const design = readDesign(text.value, name)
  if (design.problems !== undefined) return refused(name, design.problems)
  const evaluation = evaluate(design.value)
  return { evaluation, document: resultDocument(evaluation, engineName) }
}

function refused(name: string, problems: readonly Problem[]): DesignAnswer {
  return { problems, document: refusedDocument({ name, problems }, engineName) }
}
