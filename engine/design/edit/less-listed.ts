import type { Place } from '../json-places.ts'
import type { Change } from './change.ts'
import type { Leaf } from './leaves.ts'

/** Sections whose entries are lists of things: what is ordered, and what is greased. */
const listing: ReadonlySet<Place[number]> = new Set(['orders', 'grease'])

/** Whether a leaf is the name of a thing in such a list, or in that of what is masked. It keeps nobody: a list of what is there no more lists less. */
export function isListed({ place, meaning }: Leaf): boolean {
  return listing.has(place[0]) || meaning?.is === 'face'
}

/**
 * What takes things out of their lists; an entry or a list of masked faces that has nothing else goes with them.
 *
 * @param gone leaves that name what goes, by `isListed`
 * @param all leaves of the document
 */
export function lessListed(gone: readonly Leaf[], all: readonly Leaf[]): readonly Change[] {
  const holder = ({ place, meaning }: Leaf) => (meaning?.is === 'face' ? place.slice(0, -1) : place.slice(0, 2))
  const heldBy = (key: string) => (leaf: Leaf) => isName(leaf) && holder(leaf).join('.') === key
  return [...new Set(gone.map((leaf) => holder(leaf).join('.')))].flatMap((key) => {
    const own = gone.filter(heldBy(key))
    const isAll = all.filter(heldBy(key)).length === own.length
    const places: readonly Place[] = isAll ? [holder(own[0])] : own.map(({ place }) => place).toReversed()
    return places.map((place): Change => ({ kind: 'remove', place }))
  })
}

function isName({ meaning, value }: Leaf): boolean {
  return (meaning?.is === 'name' || meaning?.is === 'face') && value !== undefined
}
