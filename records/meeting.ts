/** Whether two histories of one name are the same design, and which of them is further. */
import type { Draft, History, Revision } from './store.ts'

/** What another history means for the one that is here. */
export type Meeting = 'nothing new' | 'goes on' | 'another design'

/**
 * Another history goes on where this one ends when it begins with everything that is here; it is nothing new when everything of it is
 * here already. Otherwise they have parted, and neither may take the place of the other.
 */
export function meeting(here: History, other: History): Meeting {
  if (holds(here, other)) return 'nothing new'
  return holds(other, here) ? 'goes on' : 'another design'
}

function holds(longer: History, shorter: History): boolean {
  return beginsWith(longer.revisions, shorter.revisions, sameRevision) && holdsDraft(longer.draft, shorter.draft)
}

function holdsDraft(longer: Draft | undefined, shorter: Draft | undefined): boolean {
  if (shorter === undefined) return true
  if (longer === undefined || longer.base !== shorter.base) return false
  if (!beginsWith(longer.steps, shorter.steps, sameAsJson)) return false
  // Of two drafts with the same steps, the one that was saved later holds the other.
  return longer.steps.length > shorter.steps.length || longer.position === shorter.position || longer.version > shorter.version
}

function beginsWith<Item>(
  longer: readonly Item[],
  shorter: readonly Item[],
  isSame: (one: Item, other: Item) => boolean,
): boolean {
  return shorter.length <= longer.length && shorter.every((item, index) => isSame(item, longer[index]))
}

function sameRevision(one: Revision, other: Revision): boolean {
  return (Object.keys(one) as (keyof Revision)[]).every((key) => one[key] === other[key])
}

function sameAsJson(one: object, other: object): boolean {
  return JSON.stringify(one) === JSON.stringify(other)
}
