/**
 * Forces of a flat finger in its worst state of friction, without a matrix.
 *
 * Friction moves the line of a pin's force beside the centre, to the point centre + κ n (n: the force on part b turned by +90°). A finger with
 * friction is one without it whose pins stand at these points (dyad-friction.ts). Of that finger, with its motion (flat-posture.ts):
 *
 *     λ = − power of the load / power of the port           dλ/dκ of a pin = |R| · its relative turn / power of the port
 *
 * The first is virtual work; it hangs on the points to the second order of their directions, because a point that slides along the line of
 * its force does no work. The second says for nothing whether each pin's friction stands on its worst side. Directions follow by taking the
 * finger apart (flat-joint-forces.ts); their right digits double from round to round.
 */

import { turnDirections } from './flat-joint-forces.ts'
import { moveFlat, powerFlat, turnOfJoint } from './flat-motion.ts'
import type { FlatRoom } from './flat-room.ts'
import type { RestRoom } from './rest-room.ts'

/** What is looked for over the states of friction. */
export interface WorstOf {
  /** −1 looks for the least amplitude, +1 for the largest. */
  readonly towards: 1 | -1
  /** Of each joint: |κ|, mm. */
  readonly levers: Float64Array
}

/** Rounds of directions: each doubles their right digits, from about two at the state as drawn. */
const rounds_most = 8

/** Square of a change of direction after which the next amplitude has all its digits: its error goes with the square of this. */
const settled_square = 1e-6

/** Puts pins on the side that the slope of the last amplitude asks for. @returns how many */
export function turnOver(room: FlatRoom, { sides, either, portPower }: RestRoom, { towards, levers }: WorstOf): number {
  const sense = towards * portPower.now
  let changed = 0
  for (let joint = 0; joint < sides.length; joint++) {
    if (either[joint] === 0 || levers[joint] === 0) continue
    if (sense * turnOfJoint(room, joint) * sides[joint] >= 0) continue
    sides[joint] = -sides[joint]
    changed++
  }
  return changed
}

/** Amplitude with friction on the sides that stand in the room; NaN where it is not found. The motion with friction stands there afterwards. */
export function amplitudeFlat(room: FlatRoom, rest: RestRoom, levers: Float64Array): number {
  for (let round = 0; round < rounds_most; round++) {
    const change = turnDirections(room, rest, amplitudeAtPoints(room, rest, levers))
    if (!(change < 1)) return Number.NaN
    if (change < settled_square) return amplitudeAtPoints(room, rest, levers)
  }
  return Number.NaN
}

/** Amplitude for the directions that stand in the room: off by the square of how far they are off. */
export function amplitudeAtPoints(room: FlatRoom, rest: RestRoom, levers: Float64Array): number {
  const { points, sides, directions, portPower } = rest
  const { centres } = room
  for (let joint = 0, at = 0; joint < levers.length; joint++, at += 2) {
    const lever = sides[joint] * levers[joint]
    points[at] = centres[at] - lever * directions[at + 1]
    points[at + 1] = centres[at + 1] + lever * directions[at]
  }
  moveFlat(room, points)
  portPower.now = powerFlat(room, rest.port)
  return -powerFlat(room, rest.load) / portPower.now
}
