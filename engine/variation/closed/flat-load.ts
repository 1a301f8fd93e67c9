/** What acts on flat fingers at the postures that stand in their room: springs, weight in its worst attitude, drag, a load and its keeper. */
import type { PartForce } from './columns.ts'
import { numbersOfJoint, ofForce, ofJoint, ofSpring } from './flat-numbers.ts'
import { placeOf, turned } from './flat-posture.ts'
import type { FlatRoom } from './flat-room.ts'
import type { FlatCase, FlatCouple, FlatForce } from './flat-tables.ts'
import { addWeight } from './flat-weight.ts'
import type { RestRoom } from './rest-room.ts'

/** Springs with their own friction, drag, weight that pulls closed: what stands against letting go. And the unit drag at every pin. */
export function lettingGo(room: FlatRoom, rest: RestRoom): void {
  clear(rest.load)
  clear(rest.port)
  addSprings(room, rest.load, -1)
  for (let joint = 0; joint < room.finger.joints_count; joint++) {
    addDrag(room, joint, rest)
    addUnitDrag(room, joint, rest)
  }
  addWeight(room, rest, -1)
}

/** Springs whole, drag, weight that pulls open, and a load case. And the unit of its keeper. */
export function kept(room: FlatRoom, rest: RestRoom): void {
  clear(rest.load)
  clear(rest.port)
  addSprings(room, rest.load, 0)
  for (let joint = 0; joint < room.finger.joints_count; joint++) addDrag(room, joint, rest)
  addWeight(room, rest, 1)
  if (room.finger.kept) addCase(room, rest, room.finger.kept)
}

function clear(forces: readonly PartForce[]): void {
  for (let part = 0; part < forces.length; part++) {
    const { x, y, moment } = forces[part]
    for (let set = 0; set < x.length; set++) {
      x[set] = 0
      y[set] = 0
      moment[set] = 0
    }
  }
}

function addCase(room: FlatRoom, rest: RestRoom, { forces, couples, keeperForces, keeperCouples }: FlatCase): void {
  for (let index = 0; index < forces.length; index++) addForce(room, rest.load, forces[index])
  for (let index = 0; index < couples.length; index++) addCouple(room, rest.load, couples[index])
  for (let index = 0; index < keeperForces.length; index++) addForce(room, rest.port, keeperForces[index])
  for (let index = 0; index < keeperCouples.length; index++) addCouple(room, rest.port, keeperCouples[index])
}

/** @param rubbing −1 where their own friction hinders opening, 0 where they are whole */
function addSprings({ finger, numbers, turn, drawnTurn }: FlatRoom, load: readonly PartForce[], rubbing: -1 | 0): void {
  const { part, opens } = finger.lead
  const { moment } = load[part]
  for (let index = 0; index < finger.springs.length; index++) {
    const { at, sense } = finger.springs[index]
    const preload = numbers[at + ofSpring.preload]
    const rate = numbers[at + ofSpring.rate]
    const ownFriction = numbers[at + ofSpring.ownFriction]
    for (let set = 0; set < turn.length; set++) {
      const action = sense * preload[set] + rate[set] * (drawnTurn[set] - turn[set])
      moment[set] += action + opens * rubbing * ownFriction[set] * Math.abs(action)
    }
  }
}

/** Drag that is declared of a joint's pin, against opening; the sign of its couple on part b stands in `signs` afterwards. */
function addDrag({ finger, numbers, motion }: FlatRoom, joint: number, { load, signs }: RestRoom): void {
  const drag = numbers[joint * numbersOfJoint + ofJoint.drag]
  const { part, opens } = finger.lead
  const { turn: lead } = motion[part]
  const { turn: a } = motion[finger.a[joint]]
  const { turn: b } = motion[finger.b[joint]]
  const { moment: onA } = load[finger.a[joint]]
  const { moment: onB } = load[finger.b[joint]]
  for (let set = 0; set < drag.length; set++) {
    const opening = opens * lead[set] < 0 ? a[set] - b[set] : b[set] - a[set]
    const sign = opening > 0 ? -1 : opening < 0 ? 1 : 0
    const couple = sign * drag[set]
    signs[set] = sign
    onB[set] += couple
    onA[set] -= couple
  }
}

/** A unit of drag at the pin of a joint, as the port has it. */
function addUnitDrag({ finger }: FlatRoom, joint: number, { port, signs }: RestRoom): void {
  const { moment: onA } = port[finger.a[joint]]
  const { moment: onB } = port[finger.b[joint]]
  for (let set = 0; set < signs.length; set++) {
    onB[set] += signs[set]
    onA[set] -= signs[set]
  }
}

/** A force on a part, through its place. */
function addForce(room: FlatRoom, forces: readonly PartForce[], { part, frame, at }: FlatForce): void {
  const { vector, place } = room.acting
  turned(room, { part: frame, at }, vector)
  placeOf(room, { part, at: at + ofForce.place }, place)
  const { x, y, moment } = forces[part]
  const { x: forceX, y: forceY } = vector
  const { x: placeX, y: placeY } = place
  for (let set = 0; set < x.length; set++) {
    x[set] += forceX[set]
    y[set] += forceY[set]
    moment[set] += placeX[set] * forceY[set] - placeY[set] * forceX[set]
  }
}

function addCouple({ numbers }: FlatRoom, forces: readonly PartForce[], { part, against, at }: FlatCouple): void {
  const couple = numbers[at]
  const { moment: on } = forces[part]
  const { moment: from } = forces[against]
  for (let set = 0; set < couple.length; set++) {
    on[set] += couple[set]
    from[set] -= couple[set]
  }
}
