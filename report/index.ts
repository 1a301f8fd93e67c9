/** The report's only door: evaluation in; sentences, tables, drawings and documents out. Pure. */
export { caution } from './sentences/caution.ts'
export { holdSentence } from './sentences/hold-sentence.ts'
export { motionSentence } from './sentences/motion-sentence.ts'
export { verdictSentence } from './sentences/verdict-sentence.ts'
export {
  type Answer,
  findingsOf,
  governingFinding,
  overallVerdict,
  type QuestionName,
  questionOf,
} from './tables/overall-verdict.ts'
export {
  type FigureEntry,
  type FindingEntry,
  type ResultDocument,
  refusedDocument,
  resultDocument,
} from './tables/result-document.ts'
export { setValue, type ValueText } from './tables/value-text.ts'
