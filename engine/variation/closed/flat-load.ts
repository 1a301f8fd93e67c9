/** What acts on a flat finger at the posture that stands in its room: springs, weight in its worst attitude, drag, a load and its keeper. */
import { worstAttitude } from '../../forces/worst-attitude.ts'
import type { FlatCase, FlatCouple, FlatForce } from './flat-finger.ts'
import { turnOfJoint } from './flat-motion.ts'
import { numbersOfJoint, ofForce, ofJoint, ofSpring, ofWeight } from './flat-numbers.ts'
import { type FlatRoom, placeX, placeY } from './flat-room.ts'

/** Forces on the parts, three a part: x and y (N), and the moment about the mount's origin (N·mm). */
export type PartForces = Float64Array

/** Which way the motion that stands in the room goes: +1 where it opens, which is where the lead's turn grows. */
export function openingIn({ motion, finger }: FlatRoom): 1 | -1 {
  return motion[3 * finger.lead.part] < 0 ? -1 : 1
}

/** Springs with their own friction, drag, weight that pulls closed: what stands against letting go. And the unit drag at every pin. */
export function lettingGo(room: FlatRoom, load: PartForces, port: PartForces): void {
  clear(load)
  clear(port)
  addSprings(room, load, -1)
  addDrag(room, load, port)
  addWeight(room, load, -1)
}

/** Springs whole, drag, weight that pulls open, and a load case. And the unit of its keeper. */
export function kept(room: FlatRoom, load: PartForces, port: PartForces): void {
  clear(load)
  clear(port)
  addSprings(room, load, 0)
  addDrag(room, load, undefined)
  addWeight(room, load, 1)
  if (room.finger.kept) addCase(room, load, port, room.finger.kept)
}

/** A loop, because the array's own way is a call and takes longer than so few numbers. */
function clear(forces: PartForces): void {
  for (let at = 0; at < forces.length; at++) forces[at] = 0
}

function addCase(
  room: FlatRoom,
  load: PartForces,
  port: PartForces,
  { forces, couples, keeperForces, keeperCouples }: FlatCase,
): void {
  for (let index = 0; index < forces.length; index++) addForce(room, load, forces[index])
  for (let index = 0; index < couples.length; index++) addCouple(room, load, couples[index])
  for (let index = 0; index < keeperForces.length; index++) addForce(room, port, keeperForces[index])
  for (let index = 0; index < keeperCouples.length; index++) addCouple(room, port, keeperCouples[index])
}

/** @param rubbing −1 where their own friction hinders opening, 0 where they are whole */
function addSprings({ finger, numbers, lead }: FlatRoom, load: PartForces, rubbing: -1 | 0): void {
  const { part } = finger.lead
  for (let index = 0; index < finger.springs.length; index++) {
    const at = finger.springs[index]
    const action =
      numbers[at + ofSpring.preload] + numbers[at + ofSpring.rate] * (numbers[at + ofSpring.drawnTurn] - lead.turn_rad)
    load[3 * part + 2] += action * (1 + rubbing * numbers[at + ofSpring.ownFriction] * Math.sign(action))
  }
}

/** Drag that is declared of the pins into the load, and a unit at every pin into the port, both against opening. */
function addDrag(room: FlatRoom, load: PartForces, port: PartForces | undefined): void {
  const { finger, numbers } = room
  const opening = openingIn(room)
  for (let joint = 0, at = ofJoint.drag as number; joint < finger.joints_count; joint++, at += numbersOfJoint) {
    const a = 3 * finger.a[joint] + 2
    const b = 3 * finger.b[joint] + 2
    const sign = -Math.sign(opening * turnOfJoint(room, joint))
    load[b] += sign * numbers[at]
    load[a] -= sign * numbers[at]
    if (port === undefined) continue
    port[b] += sign
    port[a] -= sign
  }
}

/** @param helps 1 in the attitude that opens most, −1 in the one that closes most, within the range */
function addWeight(room: FlatRoom, load: PartForces, helps: 1 | -1): void {
  const { finger, numbers, motion } = room
  const { weight, weights } = finger
  if (!weight || weights.length === 0) return
  const sign = helps * openingIn(room)
  let forward = 0
  let upward = 0
  for (let index = 0; index < weights.length; index++) {
    const { part, at } = weights[index]
    forward += numbers[at] * (motion[3 * part + 1] - motion[3 * part] * placeY(room, part, at + ofWeight.place))
    upward += numbers[at] * (motion[3 * part + 2] + motion[3 * part] * placeX(room, part, at + ofWeight.place))
  }
  const isAllRound = weight.to_rad - weight.from_rad >= 2 * Math.PI
  const towards_rad = isAllRound ? 0 : worstAttitude(weight, { along: sign * forward, across: sign * upward })
  const power = Math.sqrt(forward * forward + upward * upward)
  // All the way round the worst pull is along the power itself, and needs no angle.
  const cosine = isAllRound ? (sign * forward) / power : Math.cos(towards_rad)
  const sine = isAllRound ? (sign * upward) / power : Math.sin(towards_rad)
  for (let index = 0; index < weights.length; index++) {
    const { part, at } = weights[index]
    put(room, load, { part, place: at + ofWeight.place, x: numbers[at] * cosine, y: numbers[at] * sine })
  }
}

function addForce(room: FlatRoom, forces: PartForces, { part, frame, at }: FlatForce): void {
  const { numbers, poses } = room
  const x = poses[4 * frame] * numbers[at] - poses[4 * frame + 1] * numbers[at + 1]
  const y = poses[4 * frame + 1] * numbers[at] + poses[4 * frame] * numbers[at + 1]
  put(room, forces, { part, place: at + ofForce.place, x, y })
}

function addCouple({ numbers }: FlatRoom, forces: PartForces, { part, against, at }: FlatCouple): void {
  forces[3 * part + 2] += numbers[at]
  forces[3 * against + 2] -= numbers[at]
}

interface Put {
  readonly part: number
  /** Where its place in the part's frame stands. */
  readonly place: number
  readonly x: number
  readonly y: number
}

function put(room: FlatRoom, forces: PartForces, { part, place, x, y }: Put): void {
  forces[3 * part] += x
  forces[3 * part + 1] += y
  forces[3 * part + 2] += placeX(room, part, place) * y - placeY(room, part, place) * x
}
