/** A value of a block of sets, in step. */
import { turnDirections } from './flat-joint-forces.ts'
import { amplitudesAtPoints, putPoints } from './flat-rest.ts'
import type { HoldRoom, HoldValue } from './hold-room.ts'

/** Works out a value with friction on the sides and in the directions that stand in the room, into `found`. */
export function readValues(hold: HoldRoom, value: HoldValue): void {
  amplitudesAtPoints(hold.room, hold.rest, value.leversOf(hold))
  value.read(hold, hold.found)
}

/** Turns the forces to their directions where the value is nearly zero, which says what the amplitude is. */
export function turnNearZero(hold: HoldRoom, value: HoldValue): void {
  value.beZero(hold)
  putPoints(hold.room, hold.rest, value.leversOf(hold))
  turnDirections(hold.room, hold.rest)
}

/** As `readValues`, after so many rounds of directions; each doubles their right digits. */
export function settledValues(hold: HoldRoom, value: HoldValue, rounds: number): void {
  const { room, rest } = hold
  value.load(hold)
  for (let round = 0; round < rounds; round++) {
    amplitudesAtPoints(room, rest, value.leversOf(hold))
    turnDirections(room, rest)
  }
  readValues(hold, value)
}

/** Square of the last change of direction that may be left: an amplitude is then off by its square, some 1e-10 of what friction makes of it. */
const turned_square = 1e-5

/** After the last value: marks sets whose directions have not settled, and those with a pin on the wrong side. @param isSolved out: 0 for them */
export function askSettled(hold: HoldRoom, value: HoldValue, isSolved: Uint8Array): void {
  const { rest, turned } = hold
  value.turnOver(hold)
  for (let set = 0; set < isSolved.length; set++) if (!(rest.change[set] < turned_square) || turned[set] > 0) isSolved[set] = 0
}
