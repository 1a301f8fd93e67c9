/** The answer to Strength in one plain sentence: what gives first, how, under which load, and what cannot be told. */
import type { RankedStrength, StrengthList } from '../../engine/index.ts'
import { findingsOf } from '../tables/overall-verdict.ts'
import { DOING } from '../tables/strength-rows.ts'
import type { Told } from '../tables/told.ts'
import { say } from '../tables/value-text.ts'
import { cannotCloseClause } from './closed-clause.ts'
import { shortfallClause } from './shortfall-clause.ts'
import { asSentence, inside, listed } from './words.ts'

/** One sentence; a finger that does not close, or whose loads are not known, is told so, and nothing is claimed. */
export function strengthSentence(evaluation: Told): string {
  const { strength } = evaluation
  const cannotClose = cannotCloseClause(evaluation)
  if (cannotClose !== undefined || strength === undefined)
    return asSentence(`nothing can be said about strength: ${cannotClose ?? 'the finger does not move'}`)
  if (strength.refused.length > 0) return asSentence(`nothing is said about strength before ${placesOf(strength)} stated`)
  const clauses = [
    firstClause(evaluation, strength),
    openClause(strength),
    shortfallClause(evaluation, findingsOf(evaluation, 'strength')),
  ]
  return asSentence(clauses.filter((clause) => clause !== undefined).join('; '))
}

function placesOf({ refused }: StrengthList): string {
  const places = refused.map(({ place }) => place)
  return `${listed(places)} ${places.length === 1 ? 'is' : 'are'}`
}

function firstClause(evaluation: Told, strength: StrengthList): string {
  const [first] = strength.ranked
  if (!first)
    return `nothing can be said about strength: ${inside(strength.unknown ?? 'the load cases press no part that could be worked out')}`
  const { words, says, margin, factor } = first
  const under = underWords(evaluation, first)
  const by = `a margin of ${say(margin, '1')} with a factor of ${say(factor, '1')}`
  return `${bearsClause(strength, first)}: first to give is ${words}, which ${says}${under}, at ${by}`
}

function bearsClause({ open, unknown }: StrengthList, { margin }: RankedStrength): string {
  if (margin < 0) return 'it does not bear its loads with the factors asked for'
  return unknown === undefined && open.length === 0
    ? 'it bears its loads with the factors asked for'
    : 'what could be worked out bears its loads'
}

function underWords({ design }: Told, { loadCase, doing }: RankedStrength): string {
  const name = design.loadCases.find(({ id }) => id === loadCase)?.name
  return name === undefined || doing === undefined ? '' : ` (${inside(name)}, ${DOING[doing]})`
}

function openClause({ ranked, open, unknown }: StrengthList): string | undefined {
  if (unknown !== undefined) return ranked.length === 0 ? undefined : inside(unknown)
  const [first] = open
  if (!first) return undefined
  const counted = open.length === 1 ? 'one check cannot be worked out' : `${open.length} checks cannot be worked out`
  return `${counted}: ${first.words}, because ${first.why}`
}
