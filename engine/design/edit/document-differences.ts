/** Two documents side by side: each value that differs, in the words of the tables, as somebody typed it and as it is read. */
import { type Place, standAt } from '../json-places.ts'
import { changedValues } from './changed-values.ts'
import { type Desk, deskOf, typedText } from './desk.ts'
import { type FieldReading, readTyped } from './field.ts'
import { fieldLabel, placeWords } from './field-words.ts'
import type { Leaf } from './leaves.ts'
import { valueAt } from './value-at.ts'

/** What stands at a place: as it was typed, a whole thing as its text; and how a quantity was read. */
export interface TypedValue {
  readonly typed: string
  readonly read?: FieldReading
}

/** One value that differs, or a whole thing that only one of the two has: then `before` or `after` is absent. */
export interface DocumentDifference {
  readonly place: Place
  /** `part middle hole dip, x` */
  readonly where: string
  readonly before?: TypedValue
  readonly after?: TypedValue
}

/**
 * What differs between two texts of one design. Layout and the order of keys are no difference; members of lists are compared by their
 * number.
 *
 * @returns in the order of the later document, what is gone behind what is there; none for documents that say the same. A text that is
 *          no JSON throws
 */
export function documentDifferences(before: string, after: string): readonly DocumentDifference[] {
  const [was, is] = [laidBeside(before), laidBeside(after)]
  return changedValues(before, after).map(({ place }) => {
    const key = JSON.stringify(place)
    const leaf = is.leaves.get(key) ?? was.leaves.get(key)
    const [earlier, later] = [typedAt(was, place), typedAt(is, place)]
    return { place, where: placeInWords(place, leaf), ...(earlier && { before: earlier }), ...(later && { after: later }) }
  })
}

interface LaidBeside {
  readonly desk: Desk
  readonly leaves: ReadonlyMap<string, Leaf>
}

function laidBeside(text: string): LaidBeside {
  const desk = deskOf(text)
  return { desk, leaves: new Map(desk.leaves.map((leaf) => [JSON.stringify(leaf.place), leaf])) }
}

function placeInWords(place: Place, leaf: Leaf | undefined): string {
  if (leaf === undefined || leaf.row.length === place.length) return placeWords(place)
  return `${placeWords(leaf.row)}, ${fieldLabel(leaf)}`
}

function typedAt({ desk, leaves }: LaidBeside, place: Place): TypedValue | undefined {
  const value = valueAt(desk.document, place)
  if (value === undefined) return undefined
  const leaf = leaves.get(JSON.stringify(place))
  const typed = leaf && typedText(desk, leaf)
  if (leaf === undefined || typed === undefined) return { typed: typeof value === 'string' ? value : textOf(desk, place) }
  const read = readTyped(desk, leaf, typed)
  return { typed, ...(read && { read }) }
}

function textOf({ text, stands }: Desk, place: Place): string {
  const stand = standAt(stands, place)
  if (!stand) throw new Error(`a value without its text at ${place.join(' › ')}`)
  return text.slice(stand.at, stand.end)
}
