import { type Expression, readExpression } from '../numbers/expression.ts'
import type { Read } from '../numbers/fault.ts'
import { limits } from '../numbers/limits.ts'
import { type Measured, measure, type Names, namesIn } from '../numbers/measure.ts'

/** What somebody typed for a quantity, read. */
export interface TypedText {
  readonly read: Read<Expression>
  /** Its value, when it needs no dimension and has no fault. */
  readonly constant?: Measured
}

/**
 * Texts that were read. A few hundred stand in a design, and all but two are those of the reading before while a pin is dragged: a memory,
 * not a state.
 */
const known = new Map<string, TypedText>()
const noNames: Names = new Map()

/** A text as an expression. */
export function typedText(typed: string): TypedText {
  const found = known.get(typed)
  if (found) return found
  const read = readExpression(typed)
  const constant = read.value && namesIn(read.value).length === 0 ? measure(read.value, noNames).value : undefined
  const text = { read, ...(constant && { constant }) }
  if (typed.length > limits.knownTextLetters) return text
  if (known.size >= limits.knownTexts) known.clear()
  known.set(typed, text)
  return text
}
