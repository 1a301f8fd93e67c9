/**
 * Memory for the force questions of one mechanism: one posture, and one question, at a time.
 *
 * A travel asks some thousand questions a millisecond apart; fresh arrays for each cost more than the arithmetic. So the arrays stand
 * here, and everything that uses them carries a ticket: a frame or question that is used after the next one was made is a fault of
 * ours and stops the program instead of giving another posture's forces.
 */
import type { Mechanism } from '../motion/mechanism.ts'
import type { PartTurns } from '../motion/part-turns.ts'
import { type ArrayStock, arrayStock } from '../numbers/array-stock.ts'
import { type Lu, makeLu } from '../numbers/lu.ts'
import { type DyadRoom, dyadRoom } from './dyad-responses.ts'
import { type Magnitudes, makeMagnitudes } from './magnitudes.ts'
import { makeTwoForceRoom, type TwoForceRoom } from './two-force-room.ts'

/** Generalised forces in use at once in one question: load, port, drag and a few parts of them. */
const ROWS = 24

/** Which wall of a slot the pin pushes on: +1 when the force on the pin is along the slot's normal. */
export type Wall = 1 | -1

export interface ForceRoom {
  readonly mechanism: Mechanism
  /** Joints that are slots. */
  readonly slots: readonly number[]
  /** Wall that each joint's rubbing is filled in for; pins always +1. */
  readonly walls: Wall[]
  /** Closed form of the responses; absent for a mechanism that does not come apart into dyads. */
  readonly dyads: DyadRoom | undefined
  /** Whether it holds at the present posture; where not, the factors serve. */
  byDyads: boolean
  /** Where the arrays of its answers come from. */
  readonly stock: ArrayStock
  /** Factors of [C; v] at the present posture. */
  readonly lu: Lu
  /** Of the present posture. */
  readonly partTurns: PartTurns
  /** Response of each joint's friction, wall +1 first, then wall −1. */
  readonly responses: readonly Float64Array[]
  /** Rate of each in the closing motion. */
  readonly rates: Float64Array
  /** Which of them are worked out at this posture. */
  readonly known: Uint8Array
  /** Relative turn of each joint in the closing motion, rad per mm of arc. */
  readonly turns: Float64Array
  /** 1 for joints that turn by less than `limits.slowTurn_ratio` of the fastest. */
  readonly slow: Uint8Array
  readonly rows: readonly Float64Array[]
  /** One more, for what is taken in at once. */
  readonly passing: Float64Array
  readonly column: Float64Array
  readonly portResponse: Float64Array
  /** Port whose response and influence stand in the room, and the posture that they are of. */
  readonly knownPort: Float64Array
  knownPortTicket: number
  readonly freeForces: Float64Array
  readonly questionRates: Float64Array
  readonly levers: Float64Array
  readonly magnitudes: Magnitudes
  readonly twoForce: TwoForceRoom
  nextRow: number
  frameTicket: number
  questionTicket: number
  /** The question that the influences are filled in for. */
  filledTicket: number
}

/** Empty memory for one mechanism; one a bench, never shared between two that run at once. */
export function forceRoom(mechanism: Mechanism): ForceRoom {
  const { columns_count: columns, rows_count: rows } = mechanism
  const joints = mechanism.joints.length
  const numbers = arrayStock()
  return {
    mechanism,
    slots: mechanism.joints.flatMap(({ kind }, index) => (kind === 'slot' ? [index] : [])),
    walls: mechanism.joints.map(() => 1),
    dyads: dyadRoom(mechanism, numbers),
    byDyads: false,
    stock: numbers,
    lu: makeLu(columns),
    partTurns: numbers(2 * mechanism.parts_count),
    responses: Array.from({ length: 2 * joints }, () => numbers(columns)),
    rates: numbers(2 * joints),
    known: new Uint8Array(2 * joints),
    turns: numbers(joints),
    slow: new Uint8Array(joints),
    rows: Array.from({ length: ROWS }, () => numbers(columns)),
    passing: numbers(columns),
    column: numbers(columns),
    portResponse: numbers(columns),
    knownPort: numbers(columns),
    knownPortTicket: 0,
    freeForces: numbers(rows),
    questionRates: numbers(joints),
    levers: numbers(joints),
    magnitudes: makeMagnitudes(joints, numbers),
    twoForce: makeTwoForceRoom(mechanism, numbers),
    nextRow: 0,
    frameTicket: 0,
    questionTicket: 0,
    filledTicket: 0,
  }
}
