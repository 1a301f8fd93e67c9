/**
 * The states in which a finger is checked: every load case at every posture that it acts in, just closing and just held by the drive, and
 * held as it is when closed.
 */
import type { Mechanism } from '../motion/mechanism.ts'
import type { Vector } from '../numbers/vector.ts'

/** One state with its joint forces. */
export interface Pressed {
  /** Load case, by its id. */
  readonly loadCase: string
  readonly doing: 'closing' | 'holding' | 'held closed'
  /** Drive coordinate, rad or mm. */
  readonly drive: number
  /** Share of the arc of the travel: 0 open, 1 closed. */
  readonly arc_ratio: number
  readonly posture: Float64Array
  /** Two numbers a joint: x and y of the force on its part b, mount frame, N. */
  readonly forces: Float64Array
}

/** Force of a joint on its part b, N. */
export function sizeAt({ forces }: Pressed, joint: number): number {
  return Math.sqrt(forces[2 * joint] * forces[2 * joint] + forces[2 * joint + 1] * forces[2 * joint + 1])
}

/** A part at one of its pins. */
export interface PinnedPart {
  readonly pin: number
  readonly part: number
}

/** Joints through which a part takes force from one of its pins, +1 where it is their part b: its own, or all where the pin is fixed in it. */
export type PinnedJoints = readonly { readonly joint: number; readonly side: 1 | -1 }[]

/** The joints of a part at one of its pins. */
export function jointsAt({ joints }: Mechanism, { pin, part }: PinnedPart): PinnedJoints {
  const found: PinnedJoints[number][] = []
  for (let joint = 0; joint < joints.length; joint++) {
    const { pin: own, a, b } = joints[joint]
    if (own === pin && (a === part || b === part)) found.push({ joint, side: b === part ? 1 : -1 })
  }
  return found
}

/** Force that a part takes through some of its joints, mount frame, N. */
export function forceThrough(joints: PinnedJoints, { forces }: Pressed): Vector {
  let x = 0
  let y = 0
  for (const { joint, side } of joints) {
    x += side * forces[2 * joint]
    y += side * forces[2 * joint + 1]
  }
  return { x, y }
}

/** Squares of the force through one joint, one a state, N²; worked out once for all that asks for them: a memory, not a state. */
const known = new WeakMap<readonly Pressed[], Float64Array[]>()

/** Squares of the force that a part takes through some of its joints in each state, N². */
export function squaresThrough(joints: PinnedJoints, states: readonly Pressed[]): Float64Array {
  if (joints.length !== 1) {
    return Float64Array.from(states, (state) => {
      const { x, y } = forceThrough(joints, state)
      return x * x + y * y
    })
  }
  const ofJoints = known.get(states) ?? []
  known.set(states, ofJoints)
  ofJoints[joints[0].joint] ??= squaresOfJoint(joints[0].joint, states)
  return ofJoints[joints[0].joint]
}

function squaresOfJoint(joint: number, states: readonly Pressed[]): Float64Array {
  const squares = new Float64Array(states.length)
  for (let index = 0; index < states.length; index++) {
    const { forces } = states[index]
    squares[index] = forces[2 * joint] * forces[2 * joint] + forces[2 * joint + 1] * forces[2 * joint + 1]
  }
  return squares
}

/** The state with the largest square; undefined where nothing presses in any. */
export function mostPressed(squares: Float64Array): number | undefined {
  let most: number | undefined
  for (let index = 0; index < squares.length; index++) {
    if (squares[index] > (most === undefined ? 0 : squares[most])) most = index
  }
  return most
}
