/** The answer to Hold in one plain sentence: who carries each load, and whether the finger lets go afterwards. */
import type { Evaluation } from '../../engine/index.ts'
import { findingsOf } from '../tables/overall-verdict.ts'
import { cannotCloseClause, windowClause } from './closed-clause.ts'
import { holdClause } from './hold-clause.ts'
import { returnClause } from './return-clause.ts'
import { shortfallClause } from './shortfall-clause.ts'
import { asSentence } from './words.ts'

/** One sentence; nothing is claimed about holding when the finger does not close. */
export function holdSentence(evaluation: Evaluation): string {
  const cannotClose = cannotCloseClause(evaluation)
  if (cannotClose !== undefined) return asSentence(`nothing can be said about holding: ${cannotClose}`)
  const clauses = [
    holdClause(evaluation),
    returnClause(evaluation),
    windowClause(evaluation),
    shortfallClause(findingsOf(evaluation, 'hold')),
  ]
  return asSentence(clauses.filter((clause) => clause !== undefined).join('; '))
}
