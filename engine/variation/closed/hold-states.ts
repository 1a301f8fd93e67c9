/** The states of friction of a design as drawn, that its sets begin from: raised from nothing where it closes, and carried to jam and slip. */
import type { PathNode } from '../../motion/path.ts'
import type { FollowedFinger } from './hold-plainly.ts'
import {
  beginFrom,
  type HoldRoom,
  type HoldValue,
  type Place,
  placeNow,
  type RootGuess,
  somewhere,
  standAt,
  straightWay,
} from './hold-room.ts'
import { excessValue, reserveValue, valueOnSides, worstNow } from './hold-values.ts'
import type { FlatState } from './rest-room.ts'

/** States of friction as drawn. A root that the design has not is absent. */
export interface HoldStates {
  /** Where it closes; absent where that is inside its jam. */
  readonly closed?: FlatState
  readonly jam?: SteepRoot
  readonly slip?: SteepRoot
  /** Of the kept load at the jam; absent where nothing is kept. */
  readonly keptAtJam?: FlatState
}

/** A root as drawn: how steep the value is over the margin there, how the way there bends, and the state of friction. */
interface SteepRoot extends Omit<RootGuess, 'margin_rad'> {
  readonly state: FlatState
}

/** Steps in which friction is raised from nothing. */
const steps_count = 16

/**
 * Friction is raised at each place by itself: on the jam and everywhere outside of it there is one state for every corner
 * (docs/theory/rest-states.md), and it grows from the one without friction. Inside the jam there is none to be raised.
 *
 * @param turn of the lead at a node. @returns undefined where no state is found
 */
export function holdStates(
  hold: HoldRoom,
  { closed, jam, slip }: FollowedFinger,
  turn: (node: PathNode) => number,
): HoldStates | undefined {
  const isOutside = !jam || marginAt(hold, turn(jam)) < marginAt(hold, turn(closed))
  const reserve = isOutside ? raised(hold, turn(closed), reserveValue) : undefined
  if (isOutside && !reserve) return undefined
  const outside = reserve && { closed: reserve }
  if (!jam) return { ...outside }
  const jammed = rootAt(hold, { from: turn(closed), to: turn(jam), value: reserveValue })
  if (!jammed) return undefined
  if (!hold.room.finger.kept) return { ...outside, jam: jammed }
  const keptAtJam = raised(hold, turn(jam), excessValue)
  const slipped = slip && rootAt(hold, { from: turn(closed), to: turn(slip), value: excessValue })
  if (!keptAtJam || (slip && !slipped)) return undefined
  return { ...outside, jam: jammed, keptAtJam, ...(slipped && { slip: slipped }) }
}

function marginAt(hold: HoldRoom, turn_rad: number): number {
  return placeAt(hold, turn_rad).margin_rad
}

/** The state at a place, with friction raised from nothing. */
function raised(hold: HoldRoom, turn_rad: number, asked: HoldValue): FlatState | undefined {
  const levers = asked.leversOf(hold)
  const whole = levers.map(([lever]) => lever)
  const joints_count = levers.length
  let state: FlatState = {
    sides: new Float64Array(joints_count).fill(1),
    directions: new Float64Array(2 * joints_count).fill(Math.SQRT1_2),
  }
  let value = Number.NaN
  for (let step = 0; step <= steps_count; step++) {
    for (const [joint, lever] of whole.entries()) levers[joint].fill((lever * step) / steps_count)
    // Without friction the first directions count for nothing; they are taken in the first of two trials.
    for (let trial = 0; trial < 2; trial++) {
      value = valueAt(hold, turn_rad, state, asked)
      state = stateNow(hold)
    }
  }
  return Number.isNaN(value) ? undefined : state
}

function valueAt(hold: HoldRoom, turn_rad: number, state: FlatState, asked: HoldValue): number {
  standAt(hold, turn_rad)
  beginFrom(hold, state)
  return worstNow(hold, asked)
}

function stateNow({ rest: { sides, directions } }: HoldRoom): FlatState {
  return {
    sides: Float64Array.from(sides, ([side]) => side),
    directions: Float64Array.from(directions.flatMap(({ x, y }) => [x[0], y[0]])),
  }
}

/** Part of the way by which the slope of a value is taken: so near that no pin turns round in between. */
const slope_ratio = 1e-4

/** A root from where the finger is closed, and the slope of the value over the margin there. */
function rootAt(
  hold: HoldRoom,
  { from, to, value: asked }: { readonly from: number; readonly to: number; readonly value: HoldValue },
): SteepRoot | undefined {
  const closed = placeAt(hold, from)
  const state = raised(hold, to, asked)
  if (!state) return undefined
  const value = valueAt(hold, to, state, asked)
  const { margin_rad } = placeAt(hold, to)
  const beside = to - slope_ratio * (to - from)
  standAt(hold, beside)
  beginFrom(hold, state)
  // On the sides of the root itself: in the worst state the value has a kink where pins change sides.
  const onSides = valueOnSides(hold, asked)
  const slope = (value - onSides) / (margin_rad - marginAt(hold, beside))
  const bend_ratio = (to - from) / straightWay(closed, margin_rad)
  return Number.isFinite(slope) ? { slope, state, bend_ratio } : undefined
}

function placeAt(hold: HoldRoom, turn_rad: number): Place {
  const place = somewhere()
  standAt(hold, turn_rad)
  placeNow(hold, place)
  return place
}
