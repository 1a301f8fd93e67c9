import type { Place } from '../../json-places.ts'
import type { JsonValue } from '../change.ts'
import { isThing } from '../renamed.ts'
import { entriesOf } from '../value-at.ts'

/** Places of all things of a document that have a name of their own. */
export function thingsOf(value: JsonValue, place: Place = []): readonly Place[] {
  return entriesOf(value).flatMap(([step, inner]) => {
    const here = [...place, step]
    return [...(isThing(here) ? [here] : []), ...thingsOf(inner, here)]
  })
}
