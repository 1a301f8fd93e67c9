/** Room for the hold verdicts of a block of sets of a flat finger, and the words that they are spoken of in. */
import { frictionLever } from '../../forces/friction-lever.ts'
import { type Column, columns } from './columns.ts'
import { moveFlat } from './flat-motion.ts'
import { numbersOfJoint, ofJoint } from './flat-numbers.ts'
import { bendFlat, placeFlat, takeArms, turnLeadsAlike } from './flat-posture.ts'
import type { FlatRoom } from './flat-room.ts'
import { type FlatState, type RestRoom, restRoom } from './rest-room.ts'
import { takeDrive } from './take-drive.ts'

/** Numbers that a set has beside the margins of its toggles: reserve, jam, slip. */
export const besideMargins = 3

/** A toggle as it is watched: the margin is side × bend + offset; the parts of A-B and of B-C. */
export interface FlatToggle {
  /** +1 where the finger closes short of its dead centre, −1 where it closes past it. */
  readonly closes: 1 | -1
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
  readonly atRest: readonly Column[]
  readonly moving: readonly Column[]
  /** Margin of the first toggle at the postures that stand in the room (rad), and how it grows with the lead's turn. */
  readonly margin: Column
  readonly rate: Column
  /** The value that was asked for last. */
  readonly found: Column
  /** How many pins of each set were asked to turn over last. */
  readonly turned: Column
}

/** Room to ask the sets that stand in a room. */
export function holdRoom(room: FlatRoom, { stop, toggles }: Pick<HoldRoom, 'stop' | 'toggles'>): HoldRoom {
  const { finger, sets_count } = room
  const { joints_count, parts_count } = finger
  const [margin, rate, found, turned] = columns(4, sets_count)
  return {
    ...{ room, rest: restRoom({ parts_count, joints_count, sets_count }), stop, toggles, margin, rate, found, turned },
    ...{ atRest: columns(joints_count, sets_count), moving: columns(joints_count, sets_count) },
  }
}

/** Where a set about has a root. */
export interface RootGuess {
  margin_rad: number
  /** How steep the value is over the margin there. */
  slope: number
  /** By what the lead's way there from the closed posture exceeds what the slope of δ² says. */
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

/** What is asked of postures whose motion stands in the room; sides and directions of friction to begin with stand there as well. */
export interface HoldValue {
  /** Puts on what acts, before anything else is asked. */
  readonly load: (hold: HoldRoom) => void
  readonly leversOf: (hold: HoldRoom) => readonly Column[]
  /** Puts amplitudes where the value would be zero. */
  readonly beZero: (hold: HoldRoom) => void
  /** From the amplitudes that were found to the value, into `out`. */
  readonly read: (hold: HoldRoom, out: Column) => void
  /** Puts pins on the side that is worse; how many stands in `turned`. */
  readonly turnOver: (hold: HoldRoom) => void
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

/**
 * Takes up the numbers that were written into the room: arms, and levers of friction.
 *
 * @param isFit out: not 0 but for sets with friction below nothing or a pin that is not thinner than its hole
 */
export function takeSets({ room, atRest, moving }: HoldRoom, isFit: Uint8Array): void {
  const { finger, numbers } = room
  takeArms(room)
  takeDrive(room)
  isFit.fill(1)
  for (let at = finger.rooms.from; at < finger.rooms.to; at++)
    for (let set = 0; set < isFit.length; set++) if (!(numbers[at][set] > 0)) isFit[set] = 0
  for (let joint = 0, at = 0; joint < finger.joints_count; joint++, at += numbersOfJoint) {
    const radius = numbers[at + ofJoint.radius]
    const most = numbers[at + ofJoint.mostAtRest]
    const least = numbers[at + ofJoint.leastMoving]
    for (let set = 0; set < isFit.length; set++) {
      if (!(most[set] >= 0 && least[set] >= 0)) isFit[set] = 0
      atRest[joint][set] = frictionLever(radius[set], most[set])
      moving[joint][set] = frictionLever(radius[set], least[set])
    }
  }
}

/** Margins of a toggle at the postures that stand in the room, rad. */
export function marginsFlat({ room, toggles }: HoldRoom, index: number, out: Column): void {
  const { side, offset_rad } = toggles[index]
  bendFlat(room, room.finger.toggles[index], out)
  for (let set = 0; set < out.length; set++) out[set] = side * out[set] + offset_rad
}

/** Reads margins and rates of the first toggle off the room, where postures and motions stand. */
export function readPlaces(hold: HoldRoom): void {
  const { room, toggles, margin, rate } = hold
  const { side, first, second } = toggles[0]
  const lead = room.motion[room.finger.lead.part].turn
  const [before, after] = [room.motion[first].turn, room.motion[second].turn]
  marginsFlat(hold, 0, margin)
  for (let set = 0; set < rate.length; set++) rate[set] = (side * (after[set] - before[set])) / lead[set]
}

/** Where a set that stands alone is. */
export function placeNow({ room, margin, rate }: HoldRoom, place: Place): void {
  place.turn_rad = room.turn[0]
  place.margin_rad = margin[0]
  place.rate = rate[0]
}

/** Turn of the lead from a place to another margin, by the slope of δ² there, rad. */
export function straightWay({ margin_rad, rate }: Omit<Place, 'turn_rad'>, aimed_rad: number): number {
  return (aimed_rad * aimed_rad - margin_rad * margin_rad) / (2 * margin_rad * rate)
}

/** Puts a state of friction into the room, for a question to begin from. */
export function beginFrom({ rest }: HoldRoom, { sides, directions }: FlatState): void {
  for (let joint = 0; joint < sides.length; joint++) {
    rest.sides[joint].fill(sides[joint])
    rest.directions[joint].x.fill(directions[2 * joint])
    rest.directions[joint].y.fill(directions[2 * joint + 1])
  }
}

/** Puts the leads of all sets to one turn, with everything that hangs on it. */
export function standAt(hold: HoldRoom, turn_rad: number): void {
  turnLeadsAlike(hold.room, turn_rad)
  standThere(hold)
}

/** As `standAt`, where each set's lead is turned already. */
export function standThere(hold: HoldRoom): void {
  placeFlat(hold.room)
  moveFlat(hold.room, hold.room.centres)
  readPlaces(hold)
}
