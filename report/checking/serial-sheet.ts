/** One measured set as a page shows it: everything in words. */
import type { Answer } from '../tables/overall-verdict.ts'
import { overallVerdict } from '../tables/overall-verdict.ts'
import { type CheckedSet, checkSentence } from './check-sentence.ts'
import { conformityAnswer, foundText, readingRow } from './plan-rows.ts'

/** A measured set in words: the sentence, its verdict, and each reading that counts against the drawing. */
export interface SerialSheet {
  readonly sentence: string
  readonly verdict: Answer
  readonly rows: readonly {
    readonly number: number
    readonly id: string
    readonly words: string
    readonly visit: 'before coating' | 'finished'
    readonly found: string
    readonly allowed: string
    readonly conformity: 'within' | 'outside' | 'undecided'
    readonly answer: Answer
  }[]
}

/** A measured set in words. */
export function serialSheet(set: CheckedSet): SerialSheet {
  const { readings, conformities, evaluation } = set
  const rows = readings.map((reading, index) => {
    const { number, id, words, allowed } = readingRow(reading)
    const conformity = conformities[index]
    const visit = ('visit' in reading && reading.visit) || 'finished'
    return { number, id, words, visit, found: foundText(reading), allowed, conformity, answer: conformityAnswer[conformity] }
  })
  const verdict = evaluation === undefined ? 'short' : overallVerdict(evaluation.findings)
  return { sentence: checkSentence(set), verdict, rows }
}
