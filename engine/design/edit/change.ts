/** What an edit is: plain data that says which value of the document becomes another. */
import type { Place } from '../json-places.ts'

/** A value as JSON has it. */
export type JsonValue = string | number | boolean | null | readonly JsonValue[] | { readonly [key: string]: JsonValue }

/**
 * One change of the document. `set` on a key that is not there adds it at the end of its object, on the place behind the last of a list
 * adds to the list; `remove` of what is not there changes nothing; `rename` gives a key another name where it stands.
 */
export type Change =
  | { readonly kind: 'set'; readonly place: Place; readonly value: JsonValue }
  | { readonly kind: 'remove'; readonly place: Place }
  | { readonly kind: 'rename'; readonly place: Place; readonly to: string }
