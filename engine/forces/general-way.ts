/**
 * The general way to the joint forces of a question: any mechanism, any load, any port.
 *
 * What it needs of a question is worked out when it is first asked for (force-frame.ts), then the magnitudes are solved for
 * (magnitudes.ts). Slots choose their wall by complementarity: assume one, solve, and accept it only when the pin presses on
 * that wall.
 */
import { limits } from '../numbers/limits.ts'
import { type ForceFrame, responseTo, rubbingRate, rubbingResponse } from './force-frame.ts'
import type { ForceRoom, Wall } from './force-room.ts'
import { solveMagnitudes } from './magnitudes.ts'

/**
 * Fills the signed lever κ (pins, mm) or coefficient κ (slots) of each joint from its rate. A positive κ opposes a positive
 * rate.
 */
export type FillLevers = (rates: Float64Array, out: Float64Array) => void

export interface PortAndLoad {
  /** Generalised force of the unit port. */
  readonly port: Float64Array
  /** Generalised force of all that is given. */
  readonly load: Float64Array
}

/** A port and a load at a posture, as they stand in the room. */
export interface ForceQuestion {
  readonly frame: ForceFrame
  readonly room: ForceRoom
  /** Power of the unit port in the motion. */
  readonly portPower: number
  /** Amplitude without friction. */
  readonly freeAmplitude: number
  readonly ticket: number
}

/** The question's room; throws when another question has taken its place. */
export function inUse({ room, ticket }: ForceQuestion): ForceRoom {
  if (ticket !== room.questionTicket) throw new Error('force question: used after the next one was prepared')
  return room
}

/** What the general way needs of a question; worked out once, and only where the closed form does not serve. */
export function fillGeneral(question: ForceQuestion): void {
  const room = inUse(question)
  if (room.filledTicket === question.ticket) return
  room.filledTicket = question.ticket
  const { frame, freeAmplitude } = question
  const { walls, slots, column, portResponse, freeForces, twoForce } = room
  const known = isKnownPort(room, frame)
  if (!known) responseTo(frame, twoForce.port, portResponse)
  responseTo(frame, twoForce.load, column)
  for (let row = 0; row < freeForces.length; row++) freeForces[row] = -column[row] - freeAmplitude * portResponse[row]
  for (const slot of slots) walls[slot] = freeForces[frame.mechanism.joints[slot].row] < 0 ? -1 : 1
  fillFree(question)
  if (known) fillRates(question)
  else fillInfluence(question)
}

/**
 * Whether the last port that was filled in is this one, at this posture: then its response and the influence of friction stand. They do
 * not change with the sense of the motion, since rate and power of the port turn their signs together; slots could have
 * changed their walls.
 */
function isKnownPort(room: ForceRoom, { ticket }: ForceFrame): boolean {
  const { knownPort, slots } = room
  const { port } = room.twoForce
  let same = slots.length === 0 && room.knownPortTicket === ticket
  for (let column = 0; same && column < port.length; column++) same = knownPort[column] === port[column]
  knownPort.set(port)
  room.knownPortTicket = ticket
  return same
}

function fillRates({ frame, room }: ForceQuestion): void {
  for (let k = 0; k < room.questionRates.length; k++) room.questionRates[k] = rubbingRate(frame, k, room.walls[k])
}

function fillFree({ frame, room }: ForceQuestion): void {
  const { joints } = frame.mechanism
  const { free } = room.magnitudes
  for (let i = 0; i < joints.length; i++) {
    const { row, kind } = joints[i]
    free[2 * i] = room.freeForces[row]
    free[2 * i + 1] = kind === 'pin' ? room.freeForces[row + 1] : 0
  }
}

/** Influence of each joint's friction on every joint force, for the walls as they are set. */
function fillInfluence({ frame, room, portPower }: ForceQuestion): void {
  const { joints } = frame.mechanism
  const { influence, sizes } = room.magnitudes
  const { portResponse } = room
  const count = joints.length
  for (let k = 0; k < count; k++) {
    const response = rubbingResponse(frame, k, room.walls[k])
    const rate = rubbingRate(frame, k, room.walls[k])
    const share = rate / portPower
    room.questionRates[k] = rate
    for (let i = 0; i < count; i++) {
      const { row, kind } = joints[i]
      const at = 2 * (i * count + k)
      influence[at] = response[row] - share * portResponse[row]
      influence[at + 1] = kind === 'pin' ? response[row + 1] - share * portResponse[row + 1] : 0
      sizes[at / 2] = Math.sqrt(influence[at] * influence[at] + influence[at + 1] * influence[at + 1])
    }
  }
}

/**
 * Solves a state of friction; afterwards the room holds the levers, the magnitudes and the joint forces.
 *
 * @param start magnitudes to start from, N; left out, the frictionless ones
 * @returns false when no equilibrium was found
 */
export function solveGeneral(question: ForceQuestion, fill: FillLevers, start?: Float64Array): boolean {
  const room = inUse(question)
  const { magnitudes, levers, questionRates, slots } = room
  fillGeneral(question)
  for (let trial = 0; trial < limits.wallTrials; trial++) {
    fill(questionRates, levers)
    const solved = solveMagnitudes(magnitudes, levers, start)
    if (slots.length === 0) return solved
    if (solved && !pressWalls(room)) return true
    if (!solved) nextWalls(room)
    fillInfluence(question)
  }
  return false
}

/** Sets each slot's wall to the one its pin now presses on. Returns whether any changed. */
function pressWalls({ slots, walls, magnitudes }: ForceRoom): boolean {
  let changed = false
  for (const slot of slots) {
    const wall: Wall = magnitudes.forces[2 * slot] < 0 ? -1 : 1
    if (wall !== walls[slot]) changed = true
    walls[slot] = wall
  }
  return changed
}

/** The next combination of walls, counted up in binary over the slots. */
function nextWalls({ slots, walls }: ForceRoom): void {
  for (const slot of slots) {
    walls[slot] = walls[slot] > 0 ? -1 : 1
    if (walls[slot] < 0) return
  }
}
