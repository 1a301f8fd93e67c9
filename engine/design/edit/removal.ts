import type { Place } from '../json-places.ts'
import type { Problem } from '../problem.ts'
import type { Change } from './change.ts'
import { changeDocument } from './change-document.ts'
import { type Dependent, dependents, leavesThatName } from './dependents.ts'
import { deskOf } from './desk.ts'
import { isListed, lessListed } from './less-listed.ts'
import { newProblems } from './new-problems.ts'
import { isThing } from './renamed.ts'

/** Either the changes that remove a thing, or why it has to stay: who names it, and what the document would lack without it. */
export type Removal =
  | { readonly changes: readonly Change[] }
  | { readonly changes?: never; readonly dependents: readonly Dependent[]; readonly problems: readonly Problem[] }

/** Whether what a row is about can be asked to go: a thing with a name of its own, or a member of a list, such as a corner or a place of the rack. */
export function isRemovable(place: Place): boolean {
  return isThing(place) || typeof place.at(-1) === 'number'
}

/**
 * Removes the thing at a place: a part, a hole, a pin, one of the forces of a load, a key that may be left out.
 * It is taken out of its orders and grease points as well. It is refused while others name it, or when the document would have a problem that it has not now.
 */
export function removalOf(text: string, place: Place): Removal {
  const desk = deskOf(text)
  const naming = leavesThatName(desk, place)
  const listed = naming.filter(isListed)
  const changes: readonly Change[] = [...lessListed(listed, desk.leaves), { kind: 'remove', place }]
  if (naming.length > listed.length) return { dependents: dependents(text, place), problems: [] }
  const problems = newProblems(desk, changeDocument(text, changes))
  return problems.length > 0 ? { dependents: [], problems } : { changes }
}
