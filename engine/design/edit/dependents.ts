import type { Place } from '../json-places.ts'
import { type Desk, deskOf } from './desk.ts'
import { leafWords } from './field-words.ts'
import type { Leaf } from './leaves.ts'
import { isWithin, thingsNamed } from './named-things.ts'

/** Somebody who names a thing: where, and in words such as `pin mcp: hole 2`. */
export interface Dependent {
  readonly place: Place
  readonly says: string
}

/**
 * Who names the thing at a place, or something that stands in it; what stands in it itself does not count.
 *
 * @param text of the document; one that is no JSON throws
 * @returns in the order of the document; none for a place that nobody names
 */
export function dependents(text: string, place: Place): readonly Dependent[] {
  return leavesThatName(deskOf(text), place).map((leaf) => ({
    place: leaf.place,
    says: leafWords(leaf),
  }))
}

/** Leaves outside of a place that name what stands there. */
export function leavesThatName({ document, leaves }: Desk, place: Place): readonly Leaf[] {
  return leaves.filter(
    (leaf) => !isWithin(leaf.place, place) && thingsNamed(document, leaf).some((named) => isWithin(named, place)),
  )
}
