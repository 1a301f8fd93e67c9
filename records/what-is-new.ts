/** What another history of the same name adds to the one that is here. */
import type { Draft, History, Revision } from './store.ts'

/** Later revisions, and a draft that goes on from the one here or takes an empty place. */
export interface News {
  readonly revisions: readonly Revision[]
  readonly draft?: Draft
}

/**
 * Two histories belong together when one begins with everything that the other has: of the revisions, and of the steps of the draft.
 *
 * @returns what the other one has beyond the one here; undefined when they have parted, and neither may take the place of the other
 */
export function whatIsNew(here: History, other: History): News | undefined {
  const isOneLine = beginsWith(other.revisions, here.revisions) || beginsWith(here.revisions, other.revisions)
  if (!isOneLine) return undefined
  const revisions = other.revisions.slice(here.revisions.length)
  if (other.draft === undefined || (here.draft !== undefined && holds(here.draft, other.draft))) return { revisions }
  return here.draft === undefined || holds(other.draft, here.draft) ? { revisions, draft: other.draft } : undefined
}

/** Whether nothing is lost when one draft takes the place of another: of two with the same steps, the later one may. */
function holds(draft: Draft, other: Draft): boolean {
  if (draft.base !== other.base || !beginsWith(draft.steps, other.steps)) return false
  return draft.steps.length > other.steps.length || draft.position === other.position || draft.version > other.version
}

function beginsWith(longer: readonly object[], shorter: readonly object[]): boolean {
  return shorter.length <= longer.length && shorter.every((item, index) => isSame(item, longer[index]))
}

/** Both come from the same queries, so that their keys are in the same order. */
function isSame(one: object, other: object): boolean {
  return JSON.stringify(one) === JSON.stringify(other)
}
