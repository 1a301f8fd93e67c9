import type { Consequence, Disposition, Outcome, UnitSystem } from '../../engine/index.ts'
import { movedSentence } from '../sentences/moved-sentence.ts'
import { verdictSentence } from '../sentences/verdict-sentence.ts'
import type { Answer } from '../tables/overall-verdict.ts'
import { overallVerdict } from '../tables/overall-verdict.ts'
import { toldIn } from '../tables/told.ts'

/** What one decision about a size out of its limits comes to, in words. */
export interface OutcomeRow {
  readonly disposition: Disposition
  readonly answer: Answer
  /** What the finger does then. */
  readonly words: string
}

/** Rows for the three decisions, in the order in which a workshop asks: use it, mend it, make it again. */
export function outcomeRows({ outcomes }: Consequence, system: UnitSystem = 'metric'): readonly OutcomeRow[] {
  return outcomes.map((outcome) => ({
    disposition: outcome.disposition,
    answer: outcome.evaluation === undefined ? 'short' : overallVerdict(outcome.evaluation.findings),
    words: outcomeWords(outcome, system),
  }))
}

const AGAINST: Readonly<Record<Disposition, string>> = {
  'use as is': 'Against the size as drawn',
  rework: 'Brought to the nearest limit, against the size as drawn',
  scrap: 'With the size as drawn',
}

function outcomeWords({ disposition, evaluation, moved }: Outcome, system: UnitSystem): string {
  if (evaluation === undefined) return `${AGAINST[disposition]}: no finger can be built of it.`
  if (moved === undefined) return `${AGAINST[disposition]}: ${verdictSentence(toldIn(system, evaluation))}`
  return `${AGAINST[disposition]}: ${movedSentence(moved, system)}`
}
