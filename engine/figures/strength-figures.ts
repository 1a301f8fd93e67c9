/** What gives first: every check of strength as a figure, and all of them in one list, the least margin first. */
import { once } from '../numbers/once.ts'
import { USUAL_FACTORS } from '../strength/factors.ts'
import { finishedDesign } from '../strength/finished-design.ts'
import type { NamedStrength } from '../strength/named-strength.ts'
import type { Found, NotFound } from '../strength/strength.ts'
import type { StrengthBench } from '../strength/strength-bench.ts'
import { strengthOf } from '../strength/strength-of.ts'
import type { CaseFound } from './case-figures.ts'
import type { StrengthList, WorkingValue } from './evaluation.ts'
import { type FigureEntry, type FigureSheet, line } from './figure-sheet.ts'
import { leantStates } from './leant-states.ts'
import { driveUnit } from './motion-figures.ts'
import { heldClosed, type PressedStates, pressedStates } from './pressed-states.ts'
import { screwChecks } from './screw-checks.ts'
import { springChecks } from './spring-checks.ts'
import { hardestOnStop, stopForces } from './stop-forces.ts'
import { strengthList } from './strength-list.ts'
import type { Survey } from './survey.ts'

/** Why a factor is what it is where the design states none. */
const NOT_STATED = 'common practice, as the design states none'

/** Margins named in the working of the least one. */
const NEXT = 5

/** Margins of every check, the least of all and what gives first; the checks that could not be worked out are listed with what is missing. */
export function addStrengthFigures(sheet: FigureSheet, survey: Survey, cases: readonly CaseFound[]): StrengthList {
  const pressed = once(() => pressedStates(survey, cases))
  const { mechanism } = survey.path
  const bench: StrengthBench = {
    mechanism: { ...mechanism, design: finishedDesign(mechanism.design) },
    factors: survey.design.factors ?? USUAL_FACTORS,
    get states() {
      return pressed().states
    },
  }
  const asked = { stops: stopForces(survey, cases), leant: leantStates(survey) }
  const asksAll = sheet.asks('strength.least', 'strength.givesFirst')
  const all = [...strengthOf(bench, asked), ...springChecks(survey), ...screwChecks(survey, bench.factors)]
  const wanted = asksAll ? all : all.filter(({ name }) => sheet.asks(`strength.${name}`))
  const checks = wanted.map((check) => withHardest(check, survey, cases))
  const unknown = !asksAll && checks.every(({ standsAlone }) => standsAlone) ? undefined : unknownIn(pressed())
  const list = strengthList(survey.design, checks, unknown)
  addLeast(sheet, survey, list)
  for (const check of checks) {
    const id = `strength.${check.name}`
    if (sheet.asks(id)) sheet.add(id, entryOf(survey, check, check.standsAlone ? undefined : unknown))
  }
  return list
}

/** What is not known of the states in which parts are pressed. */
function unknownIn({ states, missing }: PressedStates): string | undefined {
  return states.length === 0 ? 'no load case acts in the plane: state one' : missing[0]
}

/** The stop that ends the travel is pressed in the state of the load case that presses hardest on it. */
function withHardest(check: NamedStrength, survey: Survey, cases: readonly CaseFound[]): NamedStrength {
  const { end } = survey.path
  const { of } = check
  if (of.kind !== 'stop' || end.by !== 'stop' || end.stop !== of.index || check.strength.margin === undefined) return check
  const hardest = hardestOnStop(cases)
  const state = hardest && heldClosed(survey, hardest)
  return state ? { ...check, strength: { ...check.strength, state } } : check
}

function entryOf(survey: Survey, { strength, loadCase }: NamedStrength, unknown: string | undefined): FigureEntry {
  if (strength.margin === undefined) return withoutMargin(strength, unknown)
  const { value } = strength.margin
  const under = (): readonly WorkingValue[] =>
    loadCase === undefined ? [] : [line('load case', loadCase, 'words', `loadCases.${loadCase}`)]
  const working = { inputs: () => [...under(), ...inputsOf(survey, strength)], steps: () => stepsOf(strength) }
  if (unknown === undefined || value < 0) return { value, ...working }
  return { noMoreThan: value, why: unknown, ...working }
}

/** What nothing presses bears any load case; what is not known bears none. */
function withoutMargin({ why, spared }: NotFound, unknown: string | undefined): FigureEntry {
  if (!spared) return { why }
  return unknown === undefined ? { why, beyond: 'above any' } : { why: unknown }
}

function inputsOf(survey: Survey, { margin, state, part }: Found): readonly WorkingValue[] {
  const { allowable, factor, unit, says, material } = margin.limit
  return [
    ...(state ? [line('load case', state.loadCase, 'words', `loadCases.${state.loadCase}`)] : []),
    ...(state ? [line('doing', state.doing, 'words'), line('at drive', state.drive, driveUnit(survey))] : []),
    ...(part === undefined ? [] : [line('part', part, 'words', `parts.${part}`)]),
    line('how it gives way', says, 'words'),
    ...(material ? [line('material', material.name, 'words', material.source)] : []),
    ...(allowable === undefined ? [] : [line('allowable', allowable, unit ?? 'MPa')]),
    survey.design.factors ? line('factor', factor, '1', 'factors') : line(`factor, ${NOT_STATED}`, factor, '1'),
  ]
}

function stepsOf({ margin, steps }: Found): readonly WorkingValue[] {
  const { stress, unit } = margin.limit
  const own = steps.map(({ name, value, unit: stepUnit }) => line(name, value, stepUnit))
  return Number.isFinite(stress) ? [...own, line(unit === undefined ? 'stress' : 'found', stress, unit ?? 'MPa')] : own
}

/** A check that is open leaves the least margin open too, unless another one falls short by itself. */
function addLeast(sheet: FigureSheet, survey: Survey, { ranked, open, unknown }: StrengthList): void {
  const [first] = ranked
  const why = unknown ?? (open.length > 0 ? openWords(open) : 'nothing is pressed by the load cases')
  const isDecided = first !== undefined && (first.margin < 0 || (unknown === undefined && open.length === 0))
  const place = first?.at && [
    line('load case', first.loadCase ?? '', 'words', `loadCases.${first.loadCase}`),
    line('doing', first.doing ?? '', 'words'),
    line('at drive', first.at.drive, driveUnit(survey)),
  ]
  const inputs = [line('checks', ranked.length + open.length, '1'), ...(place ?? [])]
  const steps = ranked.slice(0, NEXT).map(({ words, margin, figure }) => line(words, margin, '1', figure))
  const isIdle = first === undefined && unknown === undefined && open.length === 0
  sheet.add('strength.least', {
    ...(isDecided ? { value: first.margin } : { why, ...(first && { noMoreThan: first.margin }) }),
    ...(isIdle && { beyond: 'above any' as const }),
    inputs,
    steps,
  })
  sheet.add('strength.givesFirst', isDecided ? { value: first.words, inputs, steps } : { why, inputs, steps })
}

function openWords(open: StrengthList['open']): string {
  const [first] = open
  const more = open.length > 1 ? `, and ${open.length - 1} more that cannot be worked out` : ''
  return `${first.words}: ${first.why}${more}`
}
