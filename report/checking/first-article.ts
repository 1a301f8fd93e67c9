/**
 * The first-article sheet of one set: every characteristic with what was found, against what, by which gauge, and what the finger does; what
 * matters most to hold and let-go stands first. It is signed by name and date, and says what is open.
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
import { conformityAnswer, foundText, type PlanRow, planRows, readingRow } from './plan-rows.ts'

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
  /** Decisions that stand; absent as above. */
  readonly decided?: readonly { readonly characteristic?: string | undefined; readonly decision: string }[]
  /** With what each reading was taken; absent for a set that is kept nowhere, where the gauge that the plan suggests stands. */
  readonly measuredWith?: MeasuredWith
}

/** One characteristic on the sheet, as it was read or as it is still open. */
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
  readonly decisions: readonly {
    readonly of: string
    readonly outcomes: readonly OutcomeRow[]
    /** What was decided; absent while nothing is. */
    readonly taken?: string
  }[]
}

/** Makes the sheet. */
export function firstArticle(asked: FirstArticleAsked, system: UnitSystem = 'metric'): FirstArticle {
  const { design, plan, matters, set, spread, consequences, measuredWith } = asked
  const matterOf = new Map(plan.map(({ id }, index) => [id, matters[index]]))
  const shareOf = (id: string): number => matterOf.get(id)?.share ?? 0
  const about = (id: string): RowOf => ({ design, matter: matterOf.get(id), measuredWith, system })
  const byShare = (one: Characteristic, other: Characteristic): number => shareOf(other.id) - shareOf(one.id)
  const left = unmeasuredOf(plan, set.readings)
  const rows = [
    ...set.readings.map((reading) => ({ of: reading.characteristic, row: rowOf(reading, about(reading.characteristic.id)) })),
    ...left.map((of) => ({ of, row: openRow(of, about(of.id)) })),
  ]
    .toSorted((one, other) => byShare(one.of, other.of))
    .map(({ row }) => row)
  const decided = consequences.toSorted((one, other) => byShare(one.reading.characteristic, other.reading.characteristic))
  return {
    title: design.title,
    serial: set.serial,
    sentences: [checkSentence(set), ...(spread ? [measuredYieldSentence(spread)] : [])],
    rows,
    open: openLines(rows),
    decisions: decided.map((consequence) => {
      const { id, number, words } = consequence.reading.characteristic
      const taken = asked.decided?.findLast(({ characteristic }) => characteristic === id)?.decision
      return {
        of: `${number} ${words}, found ${foundText(consequence.reading, system)}`,
        outcomes: outcomeRows(consequence, system),
        ...(taken !== undefined && { taken }),
      }
    }),
  }
}

/** What the gauge leaves open, and in one line what nobody measured, what matters most first. */
function openLines(rows: readonly FirstArticleRow[]): readonly string[] {
  const left = rows.filter(({ answer }) => answer === 'notAsked').map(({ number }) => number)
  return [
    ...rows.flatMap(({ answer, number, words }) =>
      answer === 'undecided' ? [`${number} ${words}: the gauge leaves it open`] : [],
    ),
    ...(left.length === 0 ? [] : [`Not measured, what matters most first: ${left.join(', ')}.`]),
  ]
}

interface RowOf {
  readonly design: Design
  readonly matter: Matter | undefined
  readonly measuredWith: MeasuredWith | undefined
  readonly system: UnitSystem
}

/** What nobody measured: with what it can be is told all the same. */
function openRow(characteristic: Characteristic, { design, matter, system }: RowOf): FirstArticleRow {
  const advice = planAdvice({ design, characteristic, ...(matter && { matter }) }, system)
  const piece = characteristic.piece.title
  return { ...planRows([characteristic], system)[0], ...advice, piece, found: 'not measured', answer: 'notAsked', word: 'open' }
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
