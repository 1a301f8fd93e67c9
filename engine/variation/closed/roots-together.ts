/** Margins at which a value of a block of sets is zero, in step; the way is that of hold-window.ts. */
import { type Column, columns } from './columns.ts'
import { turnLeads } from './flat-posture.ts'
import type { RootGuesses } from './hold-guess.ts'
import { beginFrom, type HoldRoom, type HoldValue, standThere, straightWay } from './hold-room.ts'
import type { FlatState } from './rest-room.ts'
import { askSettled, readValues, turnNearZero } from './values-together.ts'

/** Where the sets of a block stand closed, and how far they are on their way to a root. */
export interface RootsWay {
  /** Turn of the lead (rad), margin (rad) and its rate where a set is closed. */
  readonly turn: Column
  readonly margin: Column
  readonly rate: Column
  /** Where the root is by the last trial (rad), and how steep the value is there. */
  readonly aimed: Column
  readonly slope: Column
  /** Value and margin of the last trial, and margin of the one before it, rad. */
  readonly value: Column
  readonly from: Column
  readonly begin: Column
  /** By what the parabola aimed beside the secant, rad. */
  readonly bent: Column
}

/** What is zero, where it about is, and the state of friction to begin from. */
export interface RootAsked {
  readonly value: HoldValue
  readonly guess: RootGuesses
  readonly state: FlatState
}

/** As many trials as a parabola needs; the last stands so near the one before it that the forces keep their directions. */
const trials_count = 3
const turningTrials = 2
/** By what the parabola may aim beside the secant for the margin to have all its digits: what it leaves is smaller by far, rad. */
const bentMost_rad = 1e-9
/** Trials nearer than this tell nothing of the slope but rounding, rad. */
const apartLeast_rad = 1e-8

/** Room for the ways of so many sets. */
export function rootsWay(sets_count: number): RootsWay {
  const [turn, margin, rate, aimed, slope, value, from, begin, bent] = columns(9, sets_count)
  return { turn, margin, rate, aimed, slope, value, from, begin, bent }
}

/** Takes the postures that stand in the room as those where the sets are closed. */
export function closedHere(way: RootsWay, { room, margin, rate }: HoldRoom): void {
  way.turn.set(room.turn)
  way.margin.set(margin)
  way.rate.set(rate)
}

/** Goes from where the sets are closed to the roots; their margins stand in `aimed`. @param isSolved out: 0 for sets that have not settled */
export function rootsTogether(
  hold: HoldRoom,
  { way, value, guess, state }: RootAsked & { readonly way: RootsWay },
  isSolved: Uint8Array,
): void {
  hold.room.turn.set(way.turn)
  hold.margin.set(way.margin)
  hold.rate.set(way.rate)
  way.aimed.set(guess.margin)
  way.slope.set(guess.slope)
  beginFrom(hold, state)
  for (let trial = 0; trial < trials_count; trial++) {
    turnOn(hold, way, trial === 0 ? guess.bend : undefined)
    turnLeads(hold.room)
    standThere(hold)
    value.load(hold)
    if (trial < turningTrials) turnNearZero(hold, value)
    readValues(hold, value)
    aimOn(hold, way, trial)
  }
  askSettled(hold, value, isSolved)
  for (let set = 0; set < isSolved.length; set++) if (!(way.bent[set] < bentMost_rad)) isSolved[set] = 0
}

/** Turns the leads on to where they aim. @param bend by what the way is longer than it looks; a short one is not */
function turnOn({ room, margin, rate }: HoldRoom, { aimed }: RootsWay, bend: Column | undefined): void {
  const { turn } = room
  for (let set = 0; set < turn.length; set++) {
    const way = straightWay({ margin_rad: margin[set], rate: rate[set] }, aimed[set])
    turn[set] += bend ? bend[set] * way : way
  }
}

/** Aims by the secant through the last two trials, and where there are three by the parabola through them. */
function aimOn({ margin, found }: HoldRoom, way: RootsWay, trial: number): void {
  const { aimed, slope, value, from, begin, bent } = way
  for (let set = 0; set < found.length; set++) {
    const apart = margin[set] - from[set]
    const isApart = trial > 0 && Math.abs(apart) > apartLeast_rad
    const secant = isApart ? (found[set] - value[set]) / apart : slope[set]
    const bend = isApart && trial > 1 ? (apart * (secant - slope[set])) / (margin[set] - begin[set]) : 0
    const on = found[set] / (secant + bend)
    aimed[set] = margin[set] - on
    bent[set] = Math.abs(on - found[set] / secant)
    slope[set] = secant
    value[set] = found[set]
    begin[set] = from[set]
    from[set] = margin[set]
  }
}
