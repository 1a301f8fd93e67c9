import type { ComparedTest, Conformity, FittedFriction, UnitSystem } from '../../engine/index.ts'
import type { Answer } from '../tables/overall-verdict.ts'
import { say } from '../tables/value-text.ts'
import { conformityAnswer } from './plan-rows.ts'

/** A bench test beside its prediction, as it is printed. */
export interface TestedRow {
  /** From 1, in the order of the tests: a set may be tested twice with the same result. */
  readonly number: number
  readonly serial: string
  readonly title: string
  readonly found: string
  readonly predicted: string
  readonly claimed: string
  /** `1.08 (1.02 to 1.14)`; absent where nothing is predicted. */
  readonly ratio?: string
  readonly answer: Answer
  readonly words: string
}

const WORDS: Readonly<Record<Conformity, string>> = {
  within: 'within what the model claims',
  outside: 'outside of what the model claims',
  undecided: 'the rig cannot tell',
}

/** Rows in the order of the tests. */
export function testedRows(compared: readonly ComparedTest[], system: UnitSystem = 'metric'): readonly TestedRow[] {
  return compared.map(({ test, title, unit, predicted, ratio, verdict }, index) => {
    const text = (value: number): string => say(value, unit, system)
    const judged = { answer: conformityAnswer[verdict], words: predicted ? WORDS[verdict] : 'nothing is predicted' }
    return {
      number: index + 1,
      serial: test.serial,
      title,
      found: test.uncertainty > 0 ? `${text(test.found)} ± ${text(test.uncertainty)}` : text(test.found),
      predicted: predicted ? text(predicted.likely) : 'none',
      claimed: predicted ? `${text(predicted.claimed.least)} to ${text(predicted.claimed.most)}` : 'none',
      ...(ratio && { ratio: `${short(ratio.value)} (${short(ratio.least)} to ${short(ratio.most)})` }),
      ...judged,
    }
  })
}

const DIGITS = 3
const short = (value: number): string => String(Number(value.toPrecision(DIGITS)))

/** What the tests say of a friction pair, a line each, the whole last. */
export function fittedLines({ pair, tests, rest }: FittedFriction): readonly string[] {
  const lines = tests.map(({ test, rest: own, why }) =>
    own
      ? `${test.serial}: ${short(own.likely)} (${short(own.least)} to ${short(own.most)}) at rest`
      : `${test.serial}: ${why}; it says nothing of ${pair.name}`,
  )
  const whole = rest
    ? `${pair.name}, at rest: ${short(rest.likely)} likely, ${short(rest.least)} to ${short(rest.most)}; typed ${short(pair.rest.likely)}, ${short(pair.rest.least)} to ${short(pair.rest.most)}.`
    : `No test says anything of ${pair.name}.`
  return [...lines, whole]
}
