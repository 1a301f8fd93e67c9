/** The verdict in one plain sentence: how it stands closed, who carries the loads, whether it lets go, what falls short. */

import type { Told } from '../tables/told.ts'
import { behaviourClause } from './behaviour-clause.ts'
import { cannotCloseClause } from './closed-clause.ts'
import { shortfallClause } from './shortfall-clause.ts'
import { asSentence } from './words.ts'

/** One sentence for the whole design. A finger that does not close is told so, with the place, and nothing else is claimed. */
export function verdictSentence(evaluation: Told): string {
  const cannotClose = cannotCloseClause(evaluation)
  if (cannotClose !== undefined) return asSentence(cannotClose)
  const clauses = [behaviourClause(evaluation), shortfallClause(evaluation, evaluation.findings)]
  return asSentence(clauses.filter((clause) => clause !== undefined).join('; '))
}
