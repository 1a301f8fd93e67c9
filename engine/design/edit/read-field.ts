import * as z from 'zod'
import { quoted } from '../../numbers/quote.ts'
import type { Place } from '../json-places.ts'
import type { Problem } from '../problem.ts'
import { readDesign } from '../read-design.ts'
import type { Change, JsonValue } from './change.ts'
import { changeDocument } from './change-document.ts'
import { type Desk, deskOf, leafAt, typedText } from './desk.ts'
import { type FieldReading, readTyped } from './field.ts'
import type { Leaf } from './leaves.ts'
import { isNew } from './new-problems.ts'
import { valueAt } from './value-at.ts'

/**
 * The change that puts a typed text at a place of the document.
 *
 * @param place of a field of `editSheet`; another one throws
 * @param typed as in the field; nothing typed leaves out what may be left out, and what is typed already
 *        changes nothing. A number that is spelt as JSON spells it is stored as one,
 *        yes and no as true and false, everything else as text
 */
export function typedChange(text: string, place: Place, typed: string): Change {
  const desk = deskOf(text)
  return changeOf(desk, leafAt(desk, place), typed)
}

/**
 * How a text would be read at a place, before it is put there: the reading of a quantity, and the problems that it would have or bring.
 *
 * @param place of a field of `editSheet`; another one throws
 * @returns `problems` at this place, and those elsewhere that the document has not got now
 */
export function readField(
  text: string,
  place: Place,
  typed: string,
): { readonly read?: FieldReading; readonly problems: readonly Problem[] } {
  const desk = deskOf(text)
  const leaf = leafAt(desk, place)
  const problems = problemsOf(desk, leaf, typed.trim())
  const read = readTyped(desk, leaf, typed.trim())
  return { ...(read && { read }), problems }
}

function problemsOf(desk: Desk, leaf: Leaf, typed: string): readonly Problem[] {
  const here = leaf.place.join('.')
  if (leaf.schema instanceof z.ZodBoolean && !yesOrNo.has(typed) && typed !== '') {
    return [{ code: 'wrong value', place: here, found: quoted(typed), needed: 'yes or no' }]
  }
  const after = changeDocument(desk.text, [changeOf(desk, leaf, typed)])
  return (readDesign(after).problems ?? []).filter((problem) => problem.place === here || isNew(problem, desk))
}

const yesOrNo: ReadonlyMap<string, boolean> = new Map([
  ['yes', true],
  ['no', false],
])

/** What is typed behind the last member of a list that is not there begins it. */
function changeOf(desk: Desk, leaf: Leaf, typed: string): Change {
  const { place, schema, value, isOptional } = leaf
  const trimmed = typed.trim()
  if (trimmed === '' && isOptional) return { kind: 'remove', place }
  const isSame = value !== undefined && typedText(desk, leaf) === typed
  const stored = isSame ? value : storedAs(schema, trimmed)
  const list = place.slice(0, -1)
  const isFirst = place.at(-1) === 0 && valueAt(desk.document, list) === undefined
  return isFirst ? { kind: 'set', place: list, value: [stored] } : { kind: 'set', place, value: stored }
}

function storedAs(schema: z.ZodType, typed: string): JsonValue {
  if (schema instanceof z.ZodBoolean) return yesOrNo.get(typed) ?? typed
  const number = Number(typed)
  const isNumber = String(number) === typed && Number.isFinite(number) && schema.safeParse(number).success
  return isNumber ? number : typed
}
