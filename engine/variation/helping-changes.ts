/**
 * Which change helps most against breaking: every size of the finger is moved by a step either way, the finger is worked out in full, and the
 * steps are ranked by what the smallest margin of strength gains. The smallest of many margins has corners, where another check takes over:
 * so each way is judged by itself and nothing is linearised.
 */
import type { Change } from '../design/edit/change.ts'
import { changeDocument } from '../design/edit/change-document.ts'
import { deskOf } from '../design/edit/desk.ts'
import { readDesign } from '../design/read-design.ts'
import { evaluate } from '../evaluate.ts'
import type { Evaluation, RankedStrength } from '../figures/evaluation.ts'
import type { SensitivityInput } from './sensitivity-input.ts'
import { sizeInputs } from './sensitivity-inputs.ts'

/** A step of one size that raises the smallest margin. */
export interface HelpingChange {
  readonly input: SensitivityInput
  readonly way: 'up' | 'down'
  /** By how much the smallest margin rises. */
  readonly gain: number
  /** The check with the smallest margin after the step. */
  readonly first: RankedStrength
  /** Requirements that fall short after the step and did not before, by id. */
  readonly costs: readonly string[]
}

/** What was found of all sizes. */
export interface HelpingChanges {
  /** The check with the smallest margin now; absent where nothing is pressed or the finger cannot be moved. */
  readonly first?: RankedStrength
  /** Those that help, the most helpful first. */
  readonly changes: readonly HelpingChange[]
  /** Sizes that were tried. */
  readonly tried_count: number
}

/**
 * Tries the sizes of a document one by one.
 *
 * @param text of a document without problems; one with problems, or without any check of strength, gives no changes
 * @returns yields how many sizes of how many are done
 */
export function* helpingChanges(text: string): Generator<{ readonly done: number; readonly of: number }, HelpingChanges> {
  const design = readDesign(text).value
  const plain = design && evaluate(design)
  const first = plain?.strength?.ranked[0]
  if (!plain || !first) return { changes: [], tried_count: 0 }
  const inputs = sizeInputs(deskOf(text))
  const found: HelpingChange[] = []
  for (const [index, input] of inputs.entries()) {
    found.push(...helpOf(input, text, { plain, first }))
    yield { done: index + 1, of: inputs.length }
  }
  return { first, changes: found.sort((one, other) => other.gain - one.gain), tried_count: inputs.length }
}

interface AsItIs {
  readonly plain: Evaluation
  readonly first: RankedStrength
}

/** A gain below this is rounding. */
const GAIN_LEAST = 1e-9

function helpOf(input: SensitivityInput, text: string, { plain, first: before }: AsItIs): readonly HelpingChange[] {
  return (['up', 'down'] as const).flatMap((way): HelpingChange[] => {
    const after = stepped(text, input[way])
    const first = after?.strength?.ranked[0]
    // A step that leaves some check open, or takes one away, says nothing of the smallest margin.
    if (!after || !first || hasLessKnown(after, plain)) return []
    const gain = first.margin - before.margin
    return gain < GAIN_LEAST ? [] : [{ input, way, gain, first, costs: costsOf(after, plain) }]
  })
}

/** Undefined where the step is refused or the finger cannot be moved after it. */
function stepped(text: string, changes: readonly Change[]): Evaluation | undefined {
  const { value } = readDesign(changeDocument(text, changes))
  const evaluation = value && evaluate(value)
  return evaluation?.travel === undefined ? undefined : evaluation
}

function hasLessKnown({ strength }: Evaluation, plain: Evaluation): boolean {
  const known = (of: Evaluation['strength']): number => of?.ranked.length ?? 0
  return known(strength) < known(plain.strength) || (strength?.unknown !== undefined && plain.strength?.unknown === undefined)
}

function costsOf({ findings }: Evaluation, plain: Evaluation): readonly string[] {
  const met = new Set(plain.findings.filter(({ verdict }) => verdict !== 'short').map(({ requirement }) => requirement.id))
  return findings.flatMap(({ verdict, requirement }) => (verdict === 'short' && met.has(requirement.id) ? [requirement.id] : []))
}
