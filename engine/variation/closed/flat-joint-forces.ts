/**
 * Joint forces of a flat finger at points of their own, dyad by dyad from the outermost, without a matrix.
 *
 * Of the dyad nearest to its dead centre the force along its first arm is left open, f, and found where the lead is in balance:
 *
 *     F = − M a⊥ / |a|² + f a        M: moment about p of what the first part carries
 *
 * so that nothing is divided by what goes to zero in a jam. Of the others, F = − (M₂ a + M₁ b) / (a × b).
 */
import type { FlatDyad } from './flat-finger.ts'
import type { PartForces } from './flat-load.ts'
import type { FlatRoom } from './flat-room.ts'
import type { RestRoom } from './rest-room.ts'

/** Moment about the lead's pin of a force of one arm's length below which the lead does not tell it. */
const openLeast_mm2 = 1e-6

/** Takes the finger apart at the points, and takes over the directions of its forces. @returns the largest square of a change of direction, weighed by its force */
export function turnDirections({ finger, nearest }: FlatRoom, rest: RestRoom, amplitude: number): number {
  const { load, port, carried, opened, points, forces, open } = rest
  for (let at = 0; at < load.length; at++) {
    carried[at] = load[at] + amplitude * port[at]
    opened[at] = 0
  }
  for (let index = finger.dyads.length - 1; index >= 0; index--) {
    if (index === nearest) takeOffNearest(rest, finger.dyads[index])
    else takeOff(rest, finger.dyads[index])
  }
  const { part, joint } = finger.lead
  const side = finger.b[joint] === part ? -1 : 1
  const perOpen = aboutPoint(opened, points, part, joint)
  if (!(Math.abs(perOpen) > openLeast_mm2)) return Number.NaN
  for (let axis = 0; axis < 2; axis++) {
    forces[2 * joint + axis] = side * carried[3 * part + axis]
    open[2 * joint + axis] = side * opened[3 * part + axis]
  }
  return takeDirections(rest, -aboutPoint(carried, points, part, joint) / perOpen)
}

/** Moment about a joint's point of what a part carries. */
function aboutPoint(carried: PartForces, points: Float64Array, part: number, joint: number): number {
  return carried[3 * part + 2] - points[2 * joint] * carried[3 * part + 1] + points[2 * joint + 1] * carried[3 * part]
}

function takeDirections({ forces, open, directions }: RestRoom, share: number): number {
  let largest = 0
  let change = 0
  for (let at = 0; at < forces.length; at += 2) {
    const x = forces[at] + share * open[at]
    const y = forces[at + 1] + share * open[at + 1]
    const size = Math.sqrt(x * x + y * y)
    if (!(size > 0)) continue
    const nx = x / size
    const ny = y / size
    const dx = nx - directions[at]
    const dy = ny - directions[at + 1]
    if (size > largest) largest = size
    if (size * (dx * dx + dy * dy) > change) change = size * (dx * dx + dy * dy)
    directions[at] = nx
    directions[at + 1] = ny
  }
  return change / largest
}

function takeOffNearest(rest: RestRoom, dyad: FlatDyad): void {
  const { carried, points } = rest
  const { first, p, q } = dyad
  const ax = points[2 * q] - points[2 * p]
  const ay = points[2 * q + 1] - points[2 * p + 1]
  const share = aboutPoint(carried, points, first, p) / (ax * ax + ay * ay)
  passOn(rest, dyad, carried, rest.forces, share * ay, -share * ax)
  passOn(rest, dyad, rest.opened, rest.open, ax, ay)
}

function takeOff(rest: RestRoom, dyad: FlatDyad): void {
  const { carried, opened, points } = rest
  const { first, second, p, q, s } = dyad
  const ax = points[2 * q] - points[2 * p]
  const ay = points[2 * q + 1] - points[2 * p + 1]
  const bx = points[2 * q] - points[2 * s]
  const by = points[2 * q + 1] - points[2 * s + 1]
  const inverse = -1 / (ax * by - ay * bx)
  const aboutFirst = inverse * aboutPoint(carried, points, first, p)
  const aboutSecond = inverse * aboutPoint(carried, points, second, s)
  passOn(rest, dyad, carried, rest.forces, aboutSecond * ax + aboutFirst * bx, aboutSecond * ay + aboutFirst * by)
  const openFirst = inverse * aboutPoint(opened, points, first, p)
  const openSecond = inverse * aboutPoint(opened, points, second, s)
  passOn(rest, dyad, opened, rest.open, openSecond * ax + openFirst * bx, openSecond * ay + openFirst * by)
}

/**
 * Keeps the forces of a dyad as those of its joints, and puts the reactions on the parts that stay.
 *
 * @param x,y the force at q on the first part
 */
function passOn(
  { points }: RestRoom,
  { first, second, beyondFirst, beyondSecond, p, q, s, pSide, qSide, sSide }: FlatDyad,
  carried: PartForces,
  out: Float64Array,
  x: number,
  y: number,
): void {
  const px = carried[3 * first] + x
  const py = carried[3 * first + 1] + y
  const sx = carried[3 * second] - x
  const sy = carried[3 * second + 1] - y
  out[2 * q] = qSide * x
  out[2 * q + 1] = qSide * y
  out[2 * p] = -pSide * px
  out[2 * p + 1] = -pSide * py
  out[2 * s] = -sSide * sx
  out[2 * s + 1] = -sSide * sy
  const i = 3 * beyondFirst
  carried[i] += px
  carried[i + 1] += py
  carried[i + 2] += points[2 * p] * py - points[2 * p + 1] * px
  const j = 3 * beyondSecond
  carried[j] += sx
  carried[j + 1] += sy
  carried[j + 2] += points[2 * s] * sy - points[2 * s + 1] * sx
}
