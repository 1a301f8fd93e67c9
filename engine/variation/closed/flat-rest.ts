/**
 * Forces of flat fingers in their worst state of friction, without a matrix.
 *
 * Friction moves the line of a pin's force beside the centre, to the point centre + κ n (n: the force on part b turned by +90°). A finger with
 * friction is one without it whose pins stand at these points (dyad-friction.ts). Of that finger, with its motion (flat-motion.ts):
 *
 *     λ = − power of the load / power of the port           dλ/dκ of a pin = |R| · its relative turn / power of the port
 *
 * The first is virtual work; it hangs on the points to the second order of their directions, because a point that slides along the line of
 * its force does no work. The second says for nothing whether each pin's friction stands on its worst side. Directions follow by taking the
 * finger apart (flat-joint-forces.ts); their right digits double from round to round.
 */
import type { Column } from './columns.ts'
import { turnDirections } from './flat-joint-forces.ts'
import { moveFlat } from './flat-motion.ts'
import type { FlatRoom } from './flat-room.ts'
import type { RestRoom } from './rest-room.ts'

/** What is looked for over the states of friction. */
export interface WorstOf {
  /** −1 looks for the least amplitude, +1 for the largest. */
  readonly towards: 1 | -1
  /** Of each joint: |κ|, mm. */
  readonly levers: readonly Column[]
}

/** Square of a change of direction after which the next amplitude has all its digits: its error goes with the square of this. */
const settled_square = 1e-6

/** Puts pins on the side that the slope of the last amplitude asks for. @param count out: how many of each set */
export function turnOver(room: FlatRoom, rest: RestRoom, { towards, levers }: WorstOf, count: Column): void {
  const { finger, motion } = room
  const { portPower } = rest
  count.fill(0)
  for (let joint = 0; joint < levers.length; joint++) {
    const { turn: a } = motion[finger.a[joint]]
    const { turn: b } = motion[finger.b[joint]]
    const [side, either, lever] = [rest.sides[joint], rest.either[joint], levers[joint]]
    for (let set = 0; set < count.length; set++) {
      const sense = towards * portPower[set] * (b[set] - a[set]) * side[set]
      if (either[set] === 0 || lever[set] === 0 || sense >= 0) continue
      side[set] = -side[set]
      count[set]++
    }
  }
}

/** Rounds of directions before a set is given up: each doubles their right digits, from about two at the state as drawn. */
const rounds_most = 8

/** Amplitude of a set that stands alone, with friction on the sides that stand in the room; NaN where it is not found. The motion with friction stands there afterwards. */
export function amplitudeFlat(room: FlatRoom, rest: RestRoom, levers: readonly Column[]): number {
  const { amplitude, change } = rest
  for (let round = 0; round < rounds_most; round++) {
    amplitudesAtPoints(room, rest, levers)
    turnDirections(room, rest)
    if (!(change[0] < 1)) return Number.NaN
    if (change[0] >= settled_square) continue
    amplitudesAtPoints(room, rest, levers)
    return amplitude[0]
  }
  return Number.NaN
}

/** Amplitudes for the directions that stand in the room, into `amplitude`: off by the square of how far these are off. */
export function amplitudesAtPoints(room: FlatRoom, rest: RestRoom, levers: readonly Column[]): void {
  const { loadPower, portPower, amplitude } = rest
  putPoints(room, rest, levers)
  moveFlat(room, rest.points)
  loadPower.fill(0)
  portPower.fill(0)
  for (let part = 1; part < room.motion.length; part++) addPowers(room, rest, part)
  for (let set = 0; set < amplitude.length; set++) amplitude[set] = -loadPower[set] / portPower[set]
}

/** Adds the powers of load and port on a part in the motions that stand in the room. */
function addPowers({ motion }: FlatRoom, { load, port, loadPower, portPower }: RestRoom, part: number): void {
  const { turn, x, y } = motion[part]
  const { x: loadX, y: loadY, moment: loadMoment } = load[part]
  const { x: portX, y: portY, moment: portMoment } = port[part]
  for (let set = 0; set < turn.length; set++) {
    loadPower[set] += loadX[set] * x[set] + loadY[set] * y[set] + loadMoment[set] * turn[set]
    portPower[set] += portX[set] * x[set] + portY[set] * y[set] + portMoment[set] * turn[set]
  }
}

/** Puts the points that the forces pass for the directions that stand in the room. */
export function putPoints({ centres }: FlatRoom, { points, sides, directions }: RestRoom, levers: readonly Column[]): void {
  for (let joint = 0; joint < levers.length; joint++) {
    const { x, y } = points[joint]
    const { x: centreX, y: centreY } = centres[joint]
    const { x: directionX, y: directionY } = directions[joint]
    const [side, lever] = [sides[joint], levers[joint]]
    for (let set = 0; set < x.length; set++) {
      const beside = side[set] * lever[set]
      x[set] = centreX[set] - beside * directionY[set]
      y[set] = centreY[set] + beside * directionX[set]
    }
  }
}
