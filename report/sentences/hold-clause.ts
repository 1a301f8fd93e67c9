/**
 * Who carries each load at the closed posture, as a clause. What the wearer carries is said to be the wearer's: the toggle is
 * never given credit for it.
 */
import type { LoadCase } from '../../engine/index.ts'
import { figureOf, numberOf, wordsOf } from '../tables/figure-lookup.ts'
import type { Told } from '../tables/told.ts'
import { say } from '../tables/value-text.ts'
import { inside, listed, withArticle } from './words.ts'

/** More names than this in one clause are not read; they are counted, and the table names them. */
const NAMES_MOST = 2

interface Carried {
  readonly by: string
  readonly cases: readonly LoadCase[]
}

/** One clause for all load cases: keepers first, then what carries itself, then what the wearer carries. */
export function holdClause(evaluation: Told): string {
  const cases = evaluation.design.loadCases
  if (cases.length === 0) return 'no load is asked for'
  const kept = cases.filter((loadCase) => loadCase.keeper !== undefined)
  // A push out of the plane is carried by the hinges whatever the finger does; the table says so.
  const others = cases.filter((loadCase) => loadCase.keeper === undefined && actsInPlane(loadCase))
  const unknown = others.filter((loadCase) => wordsOf(evaluation, `loadCase.${loadCase.id}.heldBy`) === undefined)
  return [
    ...kept.map((loadCase) => keeperClause(evaluation, loadCase)),
    ...carriedBy(evaluation, others).map((carried) => carriedClause(evaluation, carried)),
    ...unknown.map((loadCase) => unknownClause(evaluation, loadCase)),
  ].join('; ')
}

/** The load of a case as the drawing gives it: `60 N`, `1.2 N·m`, or nothing when it has none in the plane. */
export function loadWords(evaluation: Told, loadCase: LoadCase): string {
  const forces = [...loadCase.forces, ...loadCase.sideways].map((force) => say(force.force_N, 'N', evaluation.units))
  const couples = loadCase.couples.map((couple) => say(Math.abs(couple.couple_Nmm), 'N·mm', evaluation.units))
  return listed([...forces, ...couples])
}

function keeperClause(evaluation: Told, loadCase: LoadCase): string {
  const id = `loadCase.${loadCase.id}.sustainingLoad`
  const sustaining = numberOf(evaluation, id)
  const named = `${loadWords(evaluation, loadCase)} (${inside(loadCase.name)})`
  if (sustaining === undefined)
    return `whether it holds ${named} is undecided: ${inside(figureOf(evaluation, id)?.why ?? 'not calculated')}`
  const unit = figureOf(evaluation, id)?.unit ?? 'N'
  const allowed = loadCase.keeper?.allowed ?? 0
  if (sustaining > allowed) {
    return `it does not hold ${named}: the keeper would need ${say(sustaining, unit, evaluation.units)} and is allowed ${say(allowed, unit, evaluation.units)}`
  }
  return sustaining > 0
    ? `it holds ${named} with ${say(sustaining, unit, evaluation.units)} on the keeper`
    : `it holds ${named} without the keeper`
}

function carriedBy(evaluation: Told, cases: readonly LoadCase[]): readonly Carried[] {
  const groups = new Map<string, LoadCase[]>()
  for (const loadCase of cases) {
    const by = wordsOf(evaluation, `loadCase.${loadCase.id}.heldBy`)
    if (by !== undefined) groups.set(by, [...(groups.get(by) ?? []), loadCase])
  }
  const carried = [...groups].map(([by, grouped]) => ({ by, cases: grouped }))
  return carried.sort((one, other) => Number(isWearer(one.by)) - Number(isWearer(other.by)))
}

function carriedClause(evaluation: Told, { by, cases }: Carried): string {
  const verb = cases.length === 1 ? 'is' : 'are'
  return `${namesOf(evaluation, cases)} ${verb} carried by ${withArticle(by)}${isWearer(by) ? wearerEffort(evaluation, cases) : ''}`
}

function wearerEffort(evaluation: Told, cases: readonly LoadCase[]): string {
  const efforts = cases.flatMap((loadCase) => {
    const figure = figureOf(evaluation, `loadCase.${loadCase.id}.effortToHold`)
    return typeof figure?.value === 'number' ? [{ value: figure.value, unit: figure.unit }] : []
  })
  const most = efforts.sort((one, other) => other.value - one.value)[0]
  return most === undefined || most.value <= 0 ? '' : `, with up to ${say(most.value, most.unit, evaluation.units)} at the drive`
}

function namesOf(evaluation: Told, cases: readonly LoadCase[]): string {
  if (cases.length > NAMES_MOST) {
    const all = cases.length === evaluation.design.loadCases.filter(actsInPlane).length
    return all ? `all ${cases.length} loads` : `the other ${cases.length} loads`
  }
  return listed(cases.map((loadCase) => `${inside(loadCase.name)} (${loadWords(evaluation, loadCase)})`))
}

function actsInPlane(loadCase: LoadCase): boolean {
  return loadCase.forces.length + loadCase.couples.length > 0
}

function unknownClause(evaluation: Told, loadCase: LoadCase): string {
  const why = figureOf(evaluation, `loadCase.${loadCase.id}.heldBy`)?.why ?? 'not calculated'
  return `who carries ${inside(loadCase.name)} is undecided: ${inside(why)}`
}

function isWearer(by: string): boolean {
  return /\bwearer\b/.test(by)
}
