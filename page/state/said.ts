/** Changes in a few words, for the list of what was done. */
import type { Change, Place } from '../../engine/index.ts'

/** What the list of steps has room for, and the store too. */
const MOST_LETTERS = 300
/** Letters that nobody sees. */
const HIDDEN = /[\p{Cc}\p{Cf}\p{Cs}\p{Co}\p{Zl}\p{Zp}]/gu

/** Words that fit the list: in one line, no longer than there is room for, with nothing hidden in them. */
export function fewWords(said: string): string {
  const letters = [...said.replaceAll(HIDDEN, ' ').trim()]
  return letters.length <= MOST_LETTERS ? letters.join('') : `${letters.slice(0, MOST_LETTERS - 2).join('')} …`
}

const COORDINATES: Readonly<Record<string, string>> = { 0: 'x', 1: 'y' }

/** `x 45.23 mm, y 4.33 mm`: what became what. */
export function saidOf(changes: readonly Change[]): string {
  return changes
    .map((change) => {
      const name = nameOf(change.place)
      if (change.kind === 'set') return typeof change.value === 'object' ? name : `${name} ${String(change.value)}`
      return change.kind === 'remove' ? `${name} left out` : `${name} now ${change.to}`
    })
    .join(', ')
}

/** The last step of a place that says something: of a pair x and y, of a dimension its name. */
function nameOf(place: Place): string {
  const last = place.at(-1)
  if (typeof last === 'number') return COORDINATES[last] ?? String(last)
  return last === 'value' ? String(place.at(-2)) : (last ?? '')
}
