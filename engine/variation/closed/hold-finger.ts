/**
 * The hold verdicts of any sets in the short way: closed margins, return reserve from rest there, the margins at which they jam and slip.
 *
 * `evaluate` follows a set from open to closed and works out some hundred figures. Where only this is asked for, and the set is nearly the one
 * that was drawn, it can be solved from the design as drawn: the same closure, the same stop, the same friction, at three places. What makes
 * it short is that nothing is read, planned or factored anew: tables are made once (flat-finger.ts), each set is a list of numbers, and sets
 * are solved a block at a time, in step with each other (hold-together.ts). A set that does not come along is solved alone (hold-alone.ts);
 * where that steps back too, the long way has to say.
 */
import type { Variation } from '../sources/source.ts'
import type { Column } from './columns.ts'
import { flatRoom } from './flat-room.ts'
import { solveAlone } from './hold-alone.ts'
import { beginOf, holdGuess, holdGuesser } from './hold-guess.ts'
import { besideMargins, type HoldBegin, holdRoom, type RootGuess } from './hold-room.ts'
import { holdTogether } from './hold-together.ts'
import { type StandingHold, standingHold } from './standing-hold.ts'
import type { NotStraight } from './straight-numbers.ts'
import type { Untold } from './untold.ts'

/** Of one set: a closed margin a toggle (rad), return reserve (N·mm a pin), jam angle and slip angle (rad), the last without end where it never slips; NaN for what the design has not. */
export type HoldNumbers = Float64Array

/** Sets that are solved in step: their columns together stay in the near memory of a processor, and a table is looked up once for all. */
export const block_sets = 64

/** A block of sets. */
export interface HoldBlock {
  /** A column a source, of `block_sets` values as `Variation.setOf` takes them. */
  readonly values: readonly Column[]
  /** Out: a column a hold number. */
  readonly numbers: readonly Column[]
  /** Out: not 0 for sets that the long way has to say. */
  readonly isLong: Uint8Array
}

/** Fingers of one design. */
export interface HoldFingers {
  readonly numbers_count: number
  /** Numbers that are NaN in every set. */
  readonly untold: readonly Untold[]
  readonly solveBlock: (block: HoldBlock) => void
  /**
   * @param values one a source
   * @param out the set's numbers, where true comes back
   * @returns false where the long way has to say
   */
  readonly solve: (values: ArrayLike<number>, out: HoldNumbers) => boolean
}

/** Largest difference from the long way as drawn, of numbers about 1. */
const agrees = 1e-9

const noGuess: RootGuess = { margin_rad: Number.NaN, slope: Number.NaN, bend_ratio: Number.NaN }

/** @returns the fingers of a design; or why the short way does not serve */
export function holdFingers(variation: Variation): HoldFingers | NotStraight {
  const standing = standingHold(variation)
  if ('why' in standing) return standing
  const { hold, drawn } = standing
  const numbers_count = hold.toggles.length + besideMargins
  const out = new Float64Array(numbers_count)
  const alone = variation.sources.map(() => new Float64Array(1))
  const write = (values: ArrayLike<number>): void => {
    for (let source = 0; source < alone.length; source++) alone[source][0] = values[source]
    standing.lines.write(alone, hold.room.numbers)
  }
  const solveFromDrawn = (values: ArrayLike<number>): HoldBegin | undefined => {
    write(values)
    if (!solveAlone(standing, standing.begin(), out)) return undefined
    const { place, ways } = standing
    // A set that never slips has no slip to guess from.
    const slip = Number.isFinite(out[numbers_count - 1]) ? { ...ways.slip.guess } : noGuess
    return { turn_rad: place.turn_rad, jam: { ...ways.jam.guess }, slip }
  }
  if (!solveFromDrawn(variation.sources.map(({ nominal }) => nominal)))
    return { why: 'the closed posture as drawn is not found in the short way' }
  if (out.some((value, index) => !isSame(value, drawn[index])))
    return { why: 'as drawn, the short way and the long way do not agree' }
  const guess = holdGuesser(variation, solveFromDrawn)
  const begin = holdGuess(1)
  const solve = (values: ArrayLike<number>, numbers: HoldNumbers): boolean => {
    write(values)
    guess(alone, begin)
    return solveAlone(standing, beginOf(begin), numbers)
  }
  return { numbers_count, untold: standing.untold, solve, solveBlock: blockSolver(standing, { guess, solve }) }
}

function isSame(value: number, drawn: number): boolean {
  return Object.is(value, drawn) || Math.abs(value - drawn) <= agrees * Math.max(1, Math.abs(drawn))
}

/** Solves blocks in step; a set that does not come along alone. */
function blockSolver(
  standing: StandingHold,
  { guess, solve }: Pick<HoldFingers, 'solve'> & { readonly guess: ReturnType<typeof holdGuesser> },
): HoldFingers['solveBlock'] {
  const { room, stop, toggles } = standing.hold
  const { finger, sides, nearest } = room
  const drawn = Float64Array.from(room.numbers, ([number]) => number)
  const hold = holdRoom(flatRoom({ finger, drawn, sides, nearest, sets_count: block_sets }), { stop, toggles })
  const together = holdTogether(standing, hold)
  const begin = holdGuess(block_sets)
  const isSolved = new Uint8Array(block_sets)
  return ({ values, numbers, isLong }) => {
    standing.lines.write(values, hold.room.numbers)
    guess(values, begin)
    together(begin, numbers, isSolved)
    for (let set = 0; set < block_sets; set++) {
      isLong[set] = 0
      if (isSolved[set] !== 0) continue
      const own = new Float64Array(numbers.length)
      if (!solve(columnOf(values, set), own)) isLong[set] = 1
      for (let index = 0; index < own.length; index++) numbers[index][set] = own[index]
    }
  }
}

function columnOf(values: readonly Column[], set: number): Float64Array {
  return Float64Array.from(values, (column) => column[set])
}
