import type { Place } from '../json-places.ts'
import { readJson } from '../json-text.ts'
import type { JsonValue } from './change.ts'
import { holds } from './value-at.ts'

/** A value of the document that two texts do not share; undefined on the side where nothing stands. */
export interface ValueChange {
  readonly place: Place
  readonly before: JsonValue | undefined
  readonly after: JsonValue | undefined
}

/**
 * What differs between two documents, value by value: of things that both have, the values inside of them; of a thing that only one has,
 * the whole. Layout and the order of keys are no difference.
 *
 * @returns in the order of the later document, what is gone behind what is there; both texts must be JSON
 */
export function changedValues(before: string, after: string): readonly ValueChange[] {
  return changesIn([], { before: parsed(before), after: parsed(after) })
}

function parsed(text: string): JsonValue {
  const { value } = readJson(text)
  if (value === undefined) throw new Error('a text is compared that is no JSON')
  return value
}

function changesIn(place: Place, { before, after }: Omit<ValueChange, 'place'>): readonly ValueChange[] {
  if (!holds(before) || !holds(after) || Array.isArray(before) !== Array.isArray(after)) {
    return JSON.stringify(before) === JSON.stringify(after) ? [] : [{ place, before, after }]
  }
  const [was, is] = [new Map(Object.entries(before)), new Map(Object.entries(after))]
  const steps = [...new Set([...is.keys(), ...was.keys()])]
  const asStep = (key: string) => (Array.isArray(after) ? Number(key) : key)
  return steps.flatMap((key) => changesIn([...place, asStep(key)], { before: was.get(key), after: is.get(key) }))
}
