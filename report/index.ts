/** The report's only door: evaluation in; sentences, tables, drawings and documents out. Pure. */
export { caution } from './caution.ts'
export { holdSentence } from './hold-sentence.ts'
export { motionSentence } from './motion-sentence.ts'
export { type Answer, findingsOf, governingFinding, overallVerdict, type QuestionName, questionOf } from './overall-verdict.ts'
export { type FigureEntry, type FindingEntry, type ResultDocument, refusedDocument, resultDocument } from './result-document.ts'
export { setValue, type ValueText } from './value-text.ts'
export { verdictSentence } from './verdict-sentence.ts'
