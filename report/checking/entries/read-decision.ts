/** What is decided and signed at the bench, as it is typed at a form. */
import type { Checked, Disposition } from '../../../engine/index.ts'
import type { OutcomeRow } from '../consequence-rows.ts'
import { fieldReader, type TypedFields } from './field-reader.ts'

/** What becomes of a set that is not as drawn. */
export interface DecisionEntry {
  readonly kind: 'decision'
  readonly serial: string
  readonly characteristic: string
  readonly decision: Disposition
  readonly why: string
  /** What was calculated of the set when it was decided. */
  readonly consequence: string
}

/** About which reading a decision is, and what each way comes to. */
export interface DecisionAsked {
  readonly serial: string
  readonly characteristic: string
  readonly outcomes: readonly OutcomeRow[]
}

/** Reads a decision; what was calculated for it goes with it, so that it can be read later what was known. */
export function readDecisionEntry(
  typed: TypedFields<'decision' | 'why'>,
  { serial, characteristic, outcomes }: DecisionAsked,
): Checked<DecisionEntry> {
  const { problems, words, refuse } = fieldReader(typed)
  const chosen = outcomes.find(({ disposition }) => disposition === typed.decision)
  if (chosen === undefined)
    refuse('decision', {
      code: 'missing',
      found: typed.decision || 'nothing',
      needed: outcomes.map(({ disposition }) => disposition).join(', '),
    })
  const why = words('why', 'why it is decided so')
  if (problems.length > 0 || chosen === undefined) return { problems }
  const { disposition: decision, words: consequence } = chosen
  return { value: { kind: 'decision', serial, characteristic, decision, why, consequence } }
}

/** A statement that somebody stands for by name and date. */
export interface SignOffEntry {
  readonly kind: 'sign-off'
  readonly lot: string
  readonly serial: string
  readonly statement: string
}

/** What is signed off, and how it was judged then. */
export interface SignOffAsked {
  readonly lot: string
  readonly serial: string
  readonly judged: string
}

/** Reads a sign-off of a first article; how the set was judged then goes with it. */
export function readSignOff(typed: TypedFields<'statement'>, { lot, serial, judged }: SignOffAsked): Checked<SignOffEntry> {
  const { problems, words } = fieldReader(typed)
  const said = words('statement', 'what you stand for')
  if (problems.length > 0) return { problems }
  return { value: { kind: 'sign-off', lot, serial, statement: `First article: ${said}. As judged then: ${judged}` } }
}
