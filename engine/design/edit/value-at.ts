import type { Place } from '../json-places.ts'
import type { JsonValue } from './change.ts'

/** The value at a place of a document; undefined where nothing stands. */
export function valueAt(value: JsonValue | undefined, place: Place): JsonValue | undefined {
  let found = value
  for (const step of place) {
    if (!holds(found) || !Object.hasOwn(found, step)) return undefined
    found = (found as { readonly [step: string | number]: JsonValue })[step]
  }
  return found
}

/** Whether a value is an object or a list. */
export function holds(value: JsonValue | undefined): value is Exclude<JsonValue, string | number | boolean | null> {
  return typeof value === 'object' && value !== null
}

/** The entries of an object; none of anything else. */
export function entriesOf(value: JsonValue | undefined): readonly (readonly [string, JsonValue])[] {
  return holds(value) && !Array.isArray(value) ? Object.entries(value) : []
}
