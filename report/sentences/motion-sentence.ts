/** The answer to Motion in one plain sentence: how far the joints turn, what ends the travel, how it then stands. */
import { numberOf } from '../tables/figure-lookup.ts'
import { findingsOf } from '../tables/overall-verdict.ts'
import type { Told } from '../tables/told.ts'
import { say } from '../tables/value-text.ts'
import { cannotCloseClause, closedClause } from './closed-clause.ts'
import { shortfallClause } from './shortfall-clause.ts'
import { asSentence, inside, listed } from './words.ts'

/** One sentence; a finger that does not close is told where and by how much. */
export function motionSentence(evaluation: Told): string {
  const cannotClose = cannotCloseClause(evaluation)
  if (cannotClose !== undefined || evaluation.travel === undefined)
    return asSentence(cannotClose ?? 'the finger cannot be assembled')
  const clauses = [
    turnsClause(evaluation),
    endClause(evaluation),
    closedClause(evaluation),
    shortfallClause(evaluation, findingsOf(evaluation, 'motion')),
  ]
  return asSentence(clauses.filter((clause) => clause !== undefined).join('; '))
}

function turnsClause(evaluation: Told): string | undefined {
  const turns = evaluation.design.pins.flatMap((pin) => {
    const flexion = numberOf(evaluation, `closed.joint.${pin.id}.flexion`)
    return flexion === undefined ? [] : [`${pin.id} ${say(flexion, 'rad')}`]
  })
  return turns.length === 0 ? undefined : `it closes with ${listed(turns)} of flexion`
}

function endClause(evaluation: Told): string | undefined {
  const words = evaluation.travel?.endWords.trim()
  return words === undefined || words === '' ? undefined : inside(words)
}
