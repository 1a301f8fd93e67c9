/**
 * The motion of a flat finger, dyad by dyad: that of the lead's unit turn. With points of their own in place of the pins' centres it is the
 * motion of a finger whose pins stand there (flat-rest.ts).
 *
 *     a ω₁⊥ − b ω₂⊥ = − e        e: velocity that p and s part with, a = q − p, b = q − s
 *     ω₁ = − e·b / (a × b)       ω₂ = − e·a / (a × b)
 *
 * The dyad nearest to its dead centre moves without end there while the lead stands; so all is multiplied by its a × b, which then is the
 * lead's turn.
 */
import type { FlatFinger } from './flat-finger.ts'
import type { FlatRoom } from './flat-room.ts'

/** Moves every part. @param points x and y of each joint, mm */
export function moveFlat(room: FlatRoom, points: Float64Array): void {
  const { finger, motion, nearest } = room
  const { part, joint } = finger.lead
  motion[3 * part] = 1
  motion[3 * part + 1] = points[2 * joint + 1]
  motion[3 * part + 2] = -points[2 * joint]
  for (let index = 0; index < finger.dyads.length; index++) moveDyad(room, points, index, index === nearest)
}

function moveDyad(room: FlatRoom, points: Float64Array, index: number, isNearest: boolean): void {
  const { motion } = room
  const { first, second, beyondFirst, beyondSecond, p, q, s } = room.finger.dyads[index]
  const px = points[2 * p]
  const py = points[2 * p + 1]
  const sx = points[2 * s]
  const sy = points[2 * s + 1]
  const ax = points[2 * q] - px
  const ay = points[2 * q + 1] - py
  const bx = points[2 * q] - sx
  const by = points[2 * q + 1] - sy
  const across = ax * by - ay * bx
  const i = 3 * beyondFirst
  const j = 3 * beyondSecond
  const ex = motion[i + 1] - motion[i] * py - motion[j + 1] + motion[j] * sy
  const ey = motion[i + 2] + motion[i] * px - motion[j + 2] - motion[j] * sx
  if (isNearest) slowDown(room, index, across)
  const share = isNearest ? -1 : -1 / across
  putTurn(motion, { part: first, beyond: beyondFirst, turn: share * (ex * bx + ey * by), x: px, y: py })
  putTurn(motion, { part: second, beyond: beyondSecond, turn: share * (ex * ax + ey * ay), x: sx, y: sy })
}

interface Turned {
  readonly part: number
  readonly beyond: number
  readonly turn: number
  readonly x: number
  readonly y: number
}

/** Turns a part about a point of the part beyond it. */
function putTurn(motion: Float64Array, { part, beyond, turn, x, y }: Turned): void {
  const over = turn - motion[3 * beyond]
  motion[3 * part] = turn
  motion[3 * part + 1] = motion[3 * beyond + 1] + over * y
  motion[3 * part + 2] = motion[3 * beyond + 2] - over * x
}

/** Multiplies the motion of all that is placed before a dyad. */
function slowDown({ finger, motion }: FlatRoom, until: number, share: number): void {
  scale(motion, finger.lead.part, share)
  for (let index = 0; index < until; index++) {
    scale(motion, finger.dyads[index].first, share)
    scale(motion, finger.dyads[index].second, share)
  }
}

function scale(motion: Float64Array, part: number, share: number): void {
  for (let at = 3 * part; at < 3 * part + 3; at++) motion[at] *= share
}

/** How fast the gap that was looked at last opens with the lead's turn, mm a rad. */
export function gapRateFlat({ motion, contact, finger }: FlatRoom, { round, against }: FlatFinger['stops'][number]): number {
  const i = 3 * round
  const j = 3 * against
  const turn = motion[i] - motion[j]
  const alongX = motion[i + 1] - motion[j + 1] - turn * contact.y
  const alongY = motion[i + 2] - motion[j + 2] + turn * contact.x
  return (contact.normalX * alongX + contact.normalY * alongY) / motion[3 * finger.lead.part]
}

/** Turn of each joint's part b against its part a in the motion that stands in the room. */
export function turnOfJoint({ motion, finger }: FlatRoom, joint: number): number {
  return motion[3 * finger.b[joint]] - motion[3 * finger.a[joint]]
}

/** Power of forces in the motion that stands in the room. @param forces three a part: x, y (N) and moment about the mount's origin (N·mm) */
export function powerFlat({ motion }: FlatRoom, forces: Float64Array): number {
  let power = 0
  for (let at = 3; at < motion.length; at += 3)
    power += forces[at] * motion[at + 1] + forces[at + 1] * motion[at + 2] + forces[at + 2] * motion[at]
  return power
}
