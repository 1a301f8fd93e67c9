/** The answer to Hold in one plain sentence: how the finger stands, who carries each load, and whether it lets go afterwards. */
import { findingsOf } from '../tables/overall-verdict.ts'
import type { Told } from '../tables/told.ts'
import { behaviourClause } from './behaviour-clause.ts'
import { cannotCloseClause } from './closed-clause.ts'
import { shortfallClause } from './shortfall-clause.ts'
import { asSentence } from './words.ts'

/** One sentence; nothing is claimed about holding when the finger does not close. */
export function holdSentence(evaluation: Told): string {
  const cannotClose = cannotCloseClause(evaluation)
  if (cannotClose !== undefined) return asSentence(`nothing can be said about holding: ${cannotClose}`)
  const clauses = [behaviourClause(evaluation), shortfallClause(evaluation, findingsOf(evaluation, 'hold'))]
  return asSentence(clauses.filter((clause) => clause !== undefined).join('; '))
}
