/** The verdict in one plain sentence: how it stands closed, who carries the loads, whether it lets go, what falls short. */
import type { Evaluation } from '../../engine/index.ts'
import { cannotCloseClause, closedClause, windowClause } from './closed-clause.ts'
import { holdClause } from './hold-clause.ts'
import { returnClause } from './return-clause.ts'
import { shortfallClause } from './shortfall-clause.ts'
import { asSentence } from './words.ts'

/** One sentence for the whole design. A finger that does not close is told so, with the place, and nothing else is claimed. */
export function verdictSentence(evaluation: Evaluation): string {
  const cannotClose = cannotCloseClause(evaluation)
  if (cannotClose !== undefined) return asSentence(cannotClose)
  const standing = [closedClause(evaluation), windowClause(evaluation)].filter((clause) => clause !== undefined)
  const behaviour = [holdClause(evaluation), returnClause(evaluation), shortfallClause(evaluation.findings)]
  return asSentence(`${standing.join('; ')}: ${behaviour.filter((clause) => clause !== undefined).join('; ')}`)
}
