import type { Place } from '../json-places.ts'
import type { Change } from './change.ts'
import type { Leaf } from './leaves.ts'

/** Sections whose entries are lists of things: what is ordered, and what is greased. */
const listing: ReadonlySet<Place[number]> = new Set(['orders', 'grease'])

/** Whether a leaf is the name of a thing in such a list. It keeps nobody: a list of what is there no more lists less. */
export function isListed({ place }: Leaf): boolean {
  return listing.has(place[0])
}

/**
 * What takes things out of their lists; an entry that has nothing else goes with them.
 *
 * @param gone leaves that name what goes, by `isListed`
 * @param all leaves of the document
 */
export function lessListed(gone: readonly Leaf[], all: readonly Leaf[]): readonly Change[] {
  const entryOf = ({ place }: Leaf) => `${place[0]}.${place[1]}`
  return [...new Set(gone.map(entryOf))].flatMap((entry) => {
    const own = gone.filter((leaf) => entryOf(leaf) === entry)
    const named = all.filter((leaf) => entryOf(leaf) === entry && leaf.meaning?.is === 'name')
    const places: readonly Place[] =
      named.length === own.length ? [own[0].place.slice(0, 2)] : own.map(({ place }) => place).toReversed()
    return places.map((place): Change => ({ kind: 'remove', place }))
  })
}
