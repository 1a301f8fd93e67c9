/** Another name for a thing, with everything that names it: references, names of figures, expressions. */
import { quoted } from '../../numbers/quote.ts'
import { thingOfFigure } from '../figure-names.ts'
import type { Place } from '../json-places.ts'
import type { Checked, Problem } from '../problem.ts'
import { namedSections } from '../structure.ts'
import type { Change, JsonValue } from './change.ts'
import { changeDocument } from './change-document.ts'
import { leavesThatName } from './dependents.ts'
import { deskOf } from './desk.ts'
import { expressionRenamed } from './expression-renamed.ts'
import type { Leaf } from './leaves.ts'
import { newProblems } from './new-problems.ts'
import { valueAt } from './value-at.ts'

/** Whether a place is that of a thing with a name of its own: an entry of a section, or a hole, edge or pad of a part. */
export function isThing(place: Place): boolean {
  if (place.length === 2) return namedSections.has(place[0])
  return place.length === 4 && place[0] === 'parts' && ['holes', 'edges', 'pads'].includes(String(place[2]))
}

/**
 * The changes that give a thing another name and tell everybody who names it.
 *
 * @param place of a thing (`isThing`); another one throws
 * @returns changes, references first; or the problem: the name is taken, or cannot be one there
 */
export function renamed(text: string, place: Place, to: string): Checked<readonly Change[]> {
  const desk = deskOf(text)
  const from = place.at(-1)
  const value = valueAt(desk.document, place)
  if (!isThing(place) || typeof from !== 'string' || value === undefined)
    throw new Error(`no thing to rename: ${place.join(' › ')}`)
  if (from === to) return { value: [] }
  if (valueAt(desk.document, [...place.slice(0, -1), to]) !== undefined) return { problems: [taken(place, to)] }
  const changes: Change[] = leavesThatName(desk, place).map((leaf) => ({
    kind: 'set',
    place: leaf.place,
    value: leafRenamed(leaf, { place, from, to }),
  }))
  changes.push({ kind: 'rename', place, to })
  const problems = newProblems(desk, changeDocument(text, changes))
  return problems.length > 0 ? { problems: atThing(problems, [...place.slice(0, -1), to]) } : { value: changes }
}

function taken(place: Place, to: string): Problem {
  return { code: 'used twice', place: place.join('.'), found: quoted(to), needed: 'a name that nothing else has there' }
}

/** A name that cannot be one gives a problem at every place that uses it; the one where it stands says it all. */
function atThing(problems: readonly Problem[], place: Place): readonly Problem[] {
  const here = problems.filter((problem) => problem.place === place.join('.'))
  return here.length > 0 ? here : problems
}

interface Renaming {
  readonly place: Place
  readonly from: string
  readonly to: string
}

function leafRenamed({ meaning, value }: Leaf, { place, from, to }: Renaming): JsonValue {
  const typed = String(value)
  switch (meaning?.is) {
    case 'name':
      return to
    case 'thingOfPart':
      return place.length === 2 ? typed : to
    case 'partThing': {
      const [part, thing] = typed.split('.')
      return place.length === 2 ? `${to}.${thing}` : `${part}.${to}`
    }
    case 'face':
      return `${typed.split('.')[0]}.${to}`
    case 'toleranced': {
      const steps = typed.split('.')
      return steps.with(steps.length === 1 ? 0 : place.length - 1, to).join('.')
    }
    case 'figure': {
      const at = thingOfFigure(typed)?.at ?? 0
      return typed.slice(0, at) + to + typed.slice(at + from.length)
    }
    default:
      return expressionRenamed(typed, { from, to })
  }
}
