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
  readonly closed: FlatState
  readonly jam?: SteepRoot
  readonly slip?: SteepRoot & { readonly atJam: FlatState }
}

/** A root as drawn: how steep the value is over the margin there, how the way there bends, and the state of friction. */
interface SteepRoot extends Omit<RootGuess, 'margin_rad'> {
  readonly state: FlatState
}

/** Steps in which friction is raised from nothing, and in which the lead is turned from one place to another. */
const steps_count = 16

/** @param turn of the lead at a node. @returns undefined where no state is found on the way */
export function holdStates(
  hold: HoldRoom,
  { closed, jam, slip }: FollowedFinger,
  turn: (node: PathNode) => number,
): HoldStates | undefined {
  const reserve = raised(hold, turn(closed), reserveValue)
  if (!reserve) return undefined
  if (!jam) return { closed: reserve }
  const jammed = rootAt(hold, reserve, { from: turn(closed), to: turn(jam), value: reserveValue })
  if (!jammed) return undefined
  if (!slip) return { closed: reserve, jam: jammed }
  const kept = raised(hold, turn(closed), excessValue)
  const slipped = kept && rootAt(hold, kept, { from: turn(closed), to: turn(slip), value: excessValue })
  const atJam = kept && rootAt(hold, kept, { from: turn(closed), to: turn(jam), value: excessValue })
  return slipped && atJam && { closed: reserve, jam: jammed, slip: { ...slipped, atJam: atJam.state } }
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

/** Goes from one place to another with a state, and takes the slope of the value over the margin there. */
function rootAt(
  hold: HoldRoom,
  begin: FlatState,
  { from, to, value: asked }: { readonly from: number; readonly to: number; readonly value: HoldValue },
): SteepRoot | undefined {
  const closed = placeAt(hold, from)
  let state = begin
  const at = (turn_rad: number): { readonly value: number; readonly place: Place } => {
    const value = valueAt(hold, turn_rad, state, asked)
    state = stateNow(hold)
    return { value, place: placeAt(hold, turn_rad) }
  }
  for (let step = 1; step < steps_count; step++) at(from + ((to - from) * step) / steps_count)
  const end = at(to)
  const beside = to - slope_ratio * (to - from)
  standAt(hold, beside)
  beginFrom(hold, state)
  // On the sides of the root itself: in the worst state the value has a kink where pins change sides.
  const onSides = valueOnSides(hold, asked)
  const slope = (end.value - onSides) / (end.place.margin_rad - placeAt(hold, beside).margin_rad)
  const bend_ratio = (to - from) / straightWay(closed, end.place.margin_rad)
  return Number.isFinite(slope) ? { slope, state, bend_ratio } : undefined
}

function placeAt(hold: HoldRoom, turn_rad: number): Place {
  const place = somewhere()
  standAt(hold, turn_rad)
  placeNow(hold, place)
  return place
}
