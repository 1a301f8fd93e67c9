/** States sorted by their load case, and how each part is turned in them: worked out once for all that asks for them; a memory, not a state. */
import { type Pressed, squaresThrough } from './pressed.ts'

const byCase = new WeakMap<readonly Pressed[], ReadonlyMap<string, Int32Array>>()

/** Of each load case the places of its states in the list. */
export function statesByCase(states: readonly Pressed[]): ReadonlyMap<string, Int32Array> {
  const found = byCase.get(states) ?? sorted(states)
  byCase.set(states, found)
  return found
}

function sorted(states: readonly Pressed[]): ReadonlyMap<string, Int32Array> {
  const lists = new Map<string, number[]>()
  for (const [index, { loadCase }] of states.entries()) {
    const list = lists.get(loadCase)
    if (list) list.push(index)
    else lists.set(loadCase, [index])
  }
  return new Map([...lists].map(([loadCase, list]) => [loadCase, Int32Array.from(list)]))
}

const most = new WeakMap<readonly Pressed[], ReadonlyMap<string, number>[]>()

/** Of each load case that presses a joint the place of the state that presses it most, the first of several. */
export function mostByCase(states: readonly Pressed[], joint: number): ReadonlyMap<string, number> {
  const ofJoints = most.get(states) ?? []
  most.set(states, ofJoints)
  ofJoints[joint] ??= mostPressedIn(states, joint)
  return ofJoints[joint]
}

function mostPressedIn(states: readonly Pressed[], joint: number): ReadonlyMap<string, number> {
  const squares = squaresThrough([{ joint, side: 1 }], states)
  const found = new Map<string, number>()
  for (const [loadCase, ofCase] of statesByCase(states)) {
    let largest = ofCase[0]
    for (let place = 1; place < ofCase.length; place++) if (squares[ofCase[place]] > squares[largest]) largest = ofCase[place]
    if (squares[largest] > 0) found.set(loadCase, largest)
  }
  return found
}

const turns = new WeakMap<readonly Pressed[], Float64Array[]>()

/** Cosine and sine of the turn of a part in each state, two numbers a state. */
export function turnsOf(states: readonly Pressed[], part: number): Float64Array {
  const ofParts = turns.get(states) ?? []
  turns.set(states, ofParts)
  ofParts[part] ??= turnedIn(states, part)
  return ofParts[part]
}

function turnedIn(states: readonly Pressed[], part: number): Float64Array {
  const found = new Float64Array(2 * states.length)
  for (let index = 0; index < states.length; index++) {
    // Just closing and just held stand in one posture, one after the other.
    const isAsBefore = index > 0 && states[index].posture === states[index - 1].posture
    const turn = states[index].posture[3 * part + 2]
    found[2 * index] = isAsBefore ? found[2 * index - 2] : Math.cos(turn)
    found[2 * index + 1] = isAsBefore ? found[2 * index - 1] : Math.sin(turn)
  }
  return found
}
