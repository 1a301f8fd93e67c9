/** What the hold window asks of a posture: how much return is left, and how much a keeper needs. */
import { limits } from '../../numbers/limits.ts'
import { kept, lettingGo, openingIn } from './flat-load.ts'
import { moveFlat, turnOfJoint } from './flat-motion.ts'
import { amplitudeAtPoints, amplitudeFlat, turnOver } from './flat-rest.ts'
import type { FlatRoom } from './flat-room.ts'
import type { HoldRoom, HoldValue } from './hold-room.ts'
import type { RestRoom } from './rest-room.ts'

/** Return reserve from rest, N·mm a pin: any pin may stand on either side. */
export const reserveValue: HoldValue = {
  at: ({ room, rest, atRest }) => {
    lettingGo(room, rest.load, rest.port)
    return amplitudeFlat(room, rest, atRest)
  },
  turnOver: ({ room, rest, atRest }) => {
    for (let joint = 0; joint < rest.either.length; joint++) rest.either[joint] = 1
    return turnOver(room, rest, { towards: -1, levers: atRest })
  },
  worse: 1,
}

/** What the keeper needs more than it is allowed, N or N·mm: pins stand against opening, those that hardly turn on either side. */
export const excessValue: HoldValue = {
  at: ({ room, rest, moving }) => {
    const { finger, numbers } = room
    if (!finger.kept) return Number.NaN
    kept(room, rest.load, rest.port)
    standAgainstOpening(room, rest)
    return amplitudeFlat(room, rest, moving) - numbers[finger.kept.allowed]
  },
  turnOver: ({ room, rest, moving }) => turnOver(room, rest, { towards: 1, levers: moving }),
  worse: -1,
}

/** Share of what it is allowed by which a keeper needs less where directions of forces as drawn are near enough to say so. */
const clearly_ratio = 0.1

/** Whether a keeper needs no more than it is allowed at the posture whose motion stands in the room. */
export function isKept(hold: HoldRoom): boolean {
  const { room, rest, moving } = hold
  const { finger, numbers } = room
  if (!finger.kept) return false
  kept(room, rest.load, rest.port)
  standAgainstOpening(room, rest)
  if (amplitudeAtPoints(room, rest, moving) < (1 - clearly_ratio) * numbers[finger.kept.allowed]) return true
  moveFlat(room, room.centres)
  return worstNow(hold, excessValue) <= 0
}

/** Puts every pin against the opening motion that stands in the room; those that hardly turn stay on their side and may turn over. */
function standAgainstOpening(room: FlatRoom, { sides, either }: RestRoom): void {
  const opening = openingIn(room)
  let fastest = 0
  for (let joint = 0; joint < sides.length; joint++) fastest = Math.max(fastest, Math.abs(turnOfJoint(room, joint)))
  for (let joint = 0; joint < sides.length; joint++) {
    const turn = opening * turnOfJoint(room, joint)
    const isSlow = Math.abs(turn) < limits.slowTurn_ratio * fastest
    either[joint] = isSlow ? 1 : 0
    if (!isSlow) sides[joint] = turn < 0 ? -1 : 1
  }
}

/** Times that pins are put on their other side before the long way has to say. */
const turnsOver_most = 4

/** A value in its worst state of friction, at the posture whose motion stands in the room; NaN where none is found. */
export function worstNow(hold: HoldRoom, value: HoldValue): number {
  for (let trial = 0; trial < turnsOver_most; trial++) {
    const now = value.at(hold)
    if (Number.isNaN(now) || value.turnOver(hold) === 0) return now
    moveFlat(hold.room, hold.room.centres)
  }
  return Number.NaN
}
