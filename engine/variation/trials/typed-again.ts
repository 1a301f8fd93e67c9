/** Typed quantities with a calculation put around them, so that what was typed can still be read. */

import type { Desk } from '../../design/edit/desk.ts'
import { typedText } from '../../design/edit/desk.ts'
import type { Place } from '../../design/json-places.ts'
import { readExpression } from '../../numbers/expression.ts'

/** What is typed at a place; undefined where it is left out. */
export function typedIn(desk: Desk, place: Place): string | undefined {
  const key = JSON.stringify(place)
  const leaf = desk.leaves.find((one) => JSON.stringify(one.place) === key)
  return leaf && typedText(desk, leaf)
}

/** `typed / 2`, in brackets where it is more than one quantity or name. */
export const halved = (typed: string): string => `${bracketed(typed)} / 2`

/** `10 * typed`. */
export const multiplied = (typed: string, times: number): string => `${times} * ${bracketed(typed)}`

/** `typed + added`; the added alone where nothing was typed. */
export function increased(typed: string | undefined, added: string): string {
  if (typed === undefined) return added
  return added.startsWith('-') ? `${bracketed(typed)} - ${added.slice(1)}` : `${bracketed(typed)} + ${added}`
}

function bracketed(typed: string): string {
  const kind = readExpression(typed).value?.kind
  return kind === 'amount' || kind === 'name' ? typed : `(${typed})`
}
