/** What can be added to a design, each with first values that give a design that can be read. */
import type { Change } from '../../design/edit/change.ts'
import { valueAt } from '../../design/edit/value-at.ts'
import type { Problem } from '../../design/problem.ts'
import { quoted } from '../../numbers/quote.ts'
import type { Addition } from './addition.ts'
import { type Ground, groundOf } from './ground.ts'
import { newEdgeStates } from './new-edge-states.ts'
import { newGrease } from './new-grease.ts'
import { newLink } from './new-link.ts'
import { newLoadCase } from './new-load-case.ts'
import { newMask, newRack } from './new-on-coating.ts'
import { newDimension, newHole, newPad } from './new-on-part.ts'
import { newPart } from './new-part.ts'
import { newPin } from './new-pin.ts'
import { newRequirement } from './new-requirement.ts'
import { newScrew } from './new-screw.ts'
import { newTensionSpring, newTorsionSpring } from './new-spring.ts'
import { newStop } from './new-stop.ts'
import { newToggle } from './new-toggle.ts'

const kinds = [
  newPart,
  newLink,
  newPin,
  newHole,
  newPad,
  newStop,
  newTorsionSpring,
  newTensionSpring,
  newLoadCase,
  newToggle,
  newRequirement,
  newDimension,
  newRack,
  newMask,
  newEdgeStates,
  newScrew,
  newGrease,
] as const

/**
 * What can be added to a document. Whether the finger still moves as one is said by its evaluation and is no reason to refuse.
 *
 * @param about id of the part that is asked about, for what is added to a part; any will do where it is left out
 * @returns one of each kind for which the design has what it takes; none while the document has problems
 */
export function additions(text: string, about?: string): readonly Addition[] {
  const ground = groundOf(text, about)
  if (!ground) return []
  return kinds.flatMap((make) => {
    const addition = make(ground)
    return addition ? [{ ...addition, propose: (inputs) => onFreePlaces(ground, addition.propose(inputs)) }] : []
  })
}

/** An addition only adds: what it would write over, or put on something that is not there, is a problem. */
function onFreePlaces(ground: Ground, proposed: ReturnType<Addition['propose']>): ReturnType<Addition['propose']> {
  if (!proposed.value) return proposed
  const problems = proposed.value.flatMap((change) => misplaced(ground, change))
  return problems.length > 0 ? { problems } : proposed
}

function misplaced({ desk: { document } }: Ground, { place }: Change): readonly Problem[] {
  const name = quoted(String(place.at(-1)))
  if (valueAt(document, place) !== undefined) {
    return [{ code: 'used twice', place: 'name', found: name, needed: 'a name that nothing else has there' }]
  }
  const isOwned = place.length === 1 || valueAt(document, place.slice(0, -1)) !== undefined
  const owner = quoted(String(place.at(-2)))
  return isOwned
    ? []
    : [{ code: 'unknown name', place: String(place.at(-3) ?? ''), found: owner, needed: 'something that is there' }]
}
