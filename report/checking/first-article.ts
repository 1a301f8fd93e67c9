/**
 * The first-article sheet of one set: what was found, against what, by which gauge, and what the finger does; what matters most to hold and
 * let-go stands first. It is signed by name and date, and says what is open.
 */
import {
  type Characteristic,
  type Consequence,
  type Design,
  type Matter,
  type MeasuredSpread,
  type Reading,
  readingConformity,
  type UnitSystem,
  unmeasuredOf,
} from '../../engine/index.ts'
import type { Answer } from '../tables/overall-verdict.ts'
import { type CheckedSet, checkSentence } from './check-sentence.ts'
import { type OutcomeRow, outcomeRows } from './consequence-rows.ts'
import { type MeasuredWith, withKey } from './measured-with.ts'
import { measuredYieldSentence } from './measured-yield.ts'
import { type PlanAdvice, planAdvice } from './plan-advice.ts'
import { conformityAnswer, foundText, type PlanRow, readingRow } from './plan-rows.ts'

/** What a sheet is made of. */
export interface FirstArticleAsked {
  readonly design: Design
  readonly plan: readonly Characteristic[]
  /** One a characteristic of the plan. */
  readonly matters: readonly (Matter | undefined)[]
  readonly set: CheckedSet
  readonly spread?: MeasuredSpread
  readonly consequences: readonly Consequence[]
  /** What was decided and signed off already, a line each; absent for a set that is kept nowhere. */
  readonly papers?: readonly string[]
  /** With what each reading was taken; absent for a set that is kept nowhere, where the gauge that the plan suggests stands. */
  readonly measuredWith?: MeasuredWith
}

/** One reading on the sheet. */
export interface FirstArticleRow extends PlanRow, PlanAdvice {
  readonly piece: string
  readonly found: string
  readonly answer: Answer
  readonly word: string
}

/** The sheet as words. */
export interface FirstArticle {
  readonly title: string
  readonly serial: string
  readonly sentences: readonly string[]
  readonly rows: readonly FirstArticleRow[]
  /** What is not decided: characteristics that nobody measured, and readings that show nothing. */
  readonly open: readonly string[]
  readonly decisions: readonly { readonly of: string; readonly outcomes: readonly OutcomeRow[] }[]
}

/** Makes the sheet. */
export function firstArticle(asked: FirstArticleAsked, system: UnitSystem = 'metric'): FirstArticle {
  const { design, plan, matters, set, spread, consequences, measuredWith } = asked
  const matterOf = new Map(plan.map(({ id }, index) => [id, matters[index]]))
  const shareOf = (id: string): number => matterOf.get(id)?.share ?? 0
  const rows = set.readings
    .toSorted((one, other) => shareOf(other.characteristic.id) - shareOf(one.characteristic.id))
    .map((reading) => rowOf(reading, { design, matter: matterOf.get(reading.characteristic.id), measuredWith, system }))
  const left = unmeasuredOf(plan, set.readings).toSorted((one, other) => shareOf(other.id) - shareOf(one.id))
  return {
    title: design.title,
    serial: set.serial,
    sentences: [checkSentence(set), ...(spread ? [measuredYieldSentence(spread)] : [])],
    rows,
    open: [
      ...rows
        .filter(({ answer }) => answer === 'undecided')
        .map(({ number, words }) => `${number} ${words}: the gauge leaves it open`),
      ...left.map(({ number, words }) => `${number} ${words}: not measured`),
    ],
    decisions: consequences.map((consequence) => {
      const { number, words } = consequence.reading.characteristic
      return {
        of: `${number} ${words}, found ${foundText(consequence.reading, system)}`,
        outcomes: outcomeRows(consequence, system),
      }
    }),
  }
}

interface RowOf {
  readonly design: Design
  readonly matter: Matter | undefined
  readonly measuredWith: MeasuredWith | undefined
  readonly system: UnitSystem
}

function rowOf(reading: Reading, { design, matter, measuredWith, system }: RowOf): FirstArticleRow {
  const { characteristic } = reading
  const conformity = readingConformity(reading)
  const advice = planAdvice({ design, characteristic, ...(matter && { matter }) }, system)
  const visit = ('visit' in reading && reading.visit) || 'finished'
  const used = measuredWith?.get(withKey(characteristic.id, visit))
  return {
    ...readingRow(reading, system),
    ...advice,
    ...(used !== undefined && { gauge: used }),
    piece: characteristic.piece.title,
    ...{ found: foundText(reading, system), answer: conformityAnswer[conformity], word: conformity },
  }
}
