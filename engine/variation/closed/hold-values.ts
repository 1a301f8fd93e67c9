/** What the hold window asks of a posture: how much return is left, and how much a keeper needs. */
import { limits } from '../../numbers/limits.ts'
import { kept, lettingGo } from './flat-load.ts'
import { moveFlat } from './flat-motion.ts'
import { amplitudeFlat, turnOver } from './flat-rest.ts'
import type { FlatRoom } from './flat-room.ts'
import type { HoldRoom, HoldValue } from './hold-room.ts'
import type { RestRoom } from './rest-room.ts'

/** Return reserve from rest, N·mm a pin: any pin may stand on either side. */
export const reserveValue: HoldValue = {
  load: ({ room, rest }) => lettingGo(room, rest),
  leversOf: ({ atRest }) => atRest,
  beZero: ({ rest }) => rest.amplitude.fill(0),
  read: ({ rest }, out) => out.set(rest.amplitude),
  turnOver: ({ room, rest, atRest, turned }) => {
    for (let joint = 0; joint < rest.either.length; joint++) rest.either[joint].fill(1)
    turnOver(room, rest, { towards: -1, levers: atRest }, turned)
  },
  worse: 1,
}

/** What the keeper needs more than it is allowed, N or N·mm: pins stand against opening, those that hardly turn on either side. */
export const excessValue: HoldValue = {
  load: ({ room, rest }) => {
    kept(room, rest)
    standAgainstOpening(room, rest)
  },
  leversOf: ({ moving }) => moving,
  beZero: ({ room: { finger, numbers }, rest: { amplitude } }) => {
    if (finger.kept) amplitude.set(numbers[finger.kept.allowed])
  },
  read: ({ room: { finger, numbers }, rest: { amplitude } }, out) => {
    const allowed = finger.kept && numbers[finger.kept.allowed]
    for (let set = 0; set < out.length; set++) out[set] = allowed ? amplitude[set] - allowed[set] : Number.NaN
  },
  turnOver: ({ room, rest, moving, turned }) => turnOver(room, rest, { towards: 1, levers: moving }, turned),
  worse: -1,
}

/** Puts every pin against the opening motion that stands in the room; those that hardly turn stay on their side and may turn over. */
function standAgainstOpening({ finger, motion }: FlatRoom, { sides, either, fastest }: RestRoom): void {
  const { part, opens } = finger.lead
  const lead = motion[part].turn
  fastest.fill(0)
  for (let joint = 0; joint < sides.length; joint++) {
    const [a, b] = [motion[finger.a[joint]].turn, motion[finger.b[joint]].turn]
    for (let set = 0; set < fastest.length; set++) {
      const turn = Math.abs(b[set] - a[set])
      if (turn > fastest[set]) fastest[set] = turn
    }
  }
  for (let joint = 0; joint < sides.length; joint++) {
    const [a, b] = [motion[finger.a[joint]].turn, motion[finger.b[joint]].turn]
    for (let set = 0; set < fastest.length; set++) {
      const turn = opens * lead[set] < 0 ? a[set] - b[set] : b[set] - a[set]
      const isSlow = Math.abs(turn) < limits.slowTurn_ratio * fastest[set]
      either[joint][set] = isSlow ? 1 : 0
      if (!isSlow) sides[joint][set] = turn < 0 ? -1 : 1
    }
  }
}

/** A value of a set that stands alone, with friction on the sides that stand in the room; NaN where no state is found. */
export function valueOnSides(hold: HoldRoom, value: HoldValue): number {
  const { room, rest, found } = hold
  value.load(hold)
  if (Number.isNaN(amplitudeFlat(room, rest, value.leversOf(hold)))) return Number.NaN
  value.read(hold, found)
  return found[0]
}

/** Times that pins are put on their other side before the long way has to say. */
const turnsOver_most = 4

/** A value of a set that stands alone in its worst state of friction, at the posture whose motion stands in the room; NaN where none is found. */
export function worstNow(hold: HoldRoom, value: HoldValue): number {
  for (let trial = 0; trial < turnsOver_most; trial++) {
    const now = valueOnSides(hold, value)
    if (Number.isNaN(now)) return now
    value.turnOver(hold)
    if (hold.turned[0] === 0) return now
    moveFlat(hold.room, hold.room.centres)
  }
  return Number.NaN
}
