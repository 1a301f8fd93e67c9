/** Room for the hold verdict of one set of a flat finger, and the words that it is spoken of in. */
import { frictionLever } from '../../forces/friction-lever.ts'
import { numbersOfJoint, ofJoint } from './flat-numbers.ts'
import { bendFlat } from './flat-posture.ts'
import type { FlatRoom } from './flat-room.ts'
import type { FlatState, RestRoom } from './rest-room.ts'

/** Numbers that a set has beside the margins of its toggles: reserve, jam, slip. */
export const besideMargins = 3

/** A toggle as it is watched: the margin is side × bend + offset; the parts of A-B and of B-C. */
export interface FlatToggle {
  readonly side: 1 | -1
  readonly offset_rad: number
  readonly first: number
  readonly second: number
}

/** What a finger and its forces need to be asked. */
export interface HoldRoom {
  readonly room: FlatRoom
  readonly rest: RestRoom
  readonly toggles: readonly FlatToggle[]
  /** The stop that ends the travel. */
  readonly stop: number
  /** |κ| of each joint: most friction at rest, and least friction moving, mm. */
  readonly atRest: Float64Array
  readonly moving: Float64Array
}

/** Where a set about has a root. */
export interface RootGuess {
  margin_rad: number
  /** How steep the value is over the margin there. */
  slope: number
  /** By what the lead's way there from the closed posture exceeds what the slope of cos δ says. */
  bend_ratio: number
}

/** Where the lead stands, the margin there, and how the margin grows with its turn. */
export interface Place {
  turn_rad: number
  margin_rad: number
  rate: number
}

/** Where a set about closes (turn of the lead), jams and slips. */
export interface HoldBegin {
  turn_rad: number
  readonly jam: RootGuess
  readonly slip: RootGuess
}

/** What is asked of a posture whose motion stands in the room; sides and directions of friction to begin with stand there as well. */
export interface HoldValue {
  /** With friction on those sides; NaN where no state is found. */
  readonly at: (hold: HoldRoom) => number
  /** After `at`: puts pins on the side that is worse. @returns how many */
  readonly turnOver: (hold: HoldRoom) => number
  /** +1 where a worse side moves its root to a larger margin, −1 where to a smaller one. */
  readonly worse: 1 | -1
}

/** Where a way to a root begins, where it about leads, and what is zero there. */
export interface WayToRoot {
  readonly place: Place
  readonly guess: RootGuess
  readonly value: HoldValue
}

/** A place to be written over. */
export function somewhere(): Place {
  return { turn_rad: 0, margin_rad: 0, rate: 0 }
}

/** Levers of friction of the set that stands in the room. @returns false for friction below nothing or a pin that is not thinner than its hole */
export function takeSet({ room, atRest, moving }: HoldRoom): boolean {
  const { finger, numbers } = room
  for (let at = finger.rooms.from; at < finger.rooms.to; at++) if (!(numbers[at] > 0)) return false
  for (let joint = 0, at = 0; joint < finger.joints_count; joint++, at += numbersOfJoint) {
    const most = numbers[at + ofJoint.mostAtRest]
    const least = numbers[at + ofJoint.leastMoving]
    if (!(most >= 0 && least >= 0)) return false
    atRest[joint] = frictionLever(numbers[at + ofJoint.radius], most)
    moving[joint] = frictionLever(numbers[at + ofJoint.radius], least)
  }
  return true
}

/** Margin of a toggle at the posture that stands in the room, rad. */
export function marginFlat({ room, toggles }: HoldRoom, index: number): number {
  return toggles[index].side * bendFlat(room, room.finger.toggles[index]) + toggles[index].offset_rad
}

/** Reads margin and rate of the first toggle off the room, where posture and motion stand. */
export function readPlace(hold: HoldRoom, turn_rad: number, place: Place): void {
  const { room, toggles } = hold
  const { side, first, second } = toggles[0]
  place.turn_rad = turn_rad
  place.margin_rad = marginFlat(hold, 0)
  place.rate = (side * (room.motion[3 * second] - room.motion[3 * first])) / room.motion[3 * room.finger.lead.part]
}

/** Puts a state of friction into the room, for a question to begin from. */
export function beginFrom({ rest }: HoldRoom, { sides, directions }: FlatState): void {
  // Loops, because the arrays' own way is a call and takes longer than so few numbers.
  for (let joint = 0; joint < sides.length; joint++) rest.sides[joint] = sides[joint]
  for (let at = 0; at < directions.length; at++) rest.directions[at] = directions[at]
}
