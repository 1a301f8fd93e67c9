/**
 * Effort at a port that just keeps a load from opening the finger, or just closes it against the load.
 *
 *     effortToHold ≤ frictionless ≤ effortToClose        (rest is possible between the first and the last)
 *
 * Hold falls with friction and close rises. Friction sides are those of the motion about to start; joints that hardly turn
 * (less than `limits.slowTurn_ratio` of the fastest) may stand on either side, and the larger effort is taken for both.
 */
import type { Port } from '../design/design.ts'
import type { ForceRow } from '../motion/closure.ts'
import { type Balance, type PortAndLoad, prepare } from './balance.ts'
import { type ForceBench, standingLoad } from './force-bench.ts'
import { emptyRow, type ForceFrame, slowJoints } from './force-frame.ts'
import { addPort } from './loads.ts'
import { type RestSearch, worstRest } from './rest-state.ts'

/** Unit pattern of a port at the frame's posture. */
export function portRow(bench: ForceBench, frame: ForceFrame, port: Port): Float64Array {
  const row = emptyRow(frame)
  addPort(row, port, bench.drive)
  return row.out
}

export interface EffortAsked {
  readonly port: Float64Array
  /** What acts besides springs, weight and drag; added to by the load case. */
  readonly addLoads: (row: ForceRow) => void
}

export interface Effort {
  /** Without friction, in the port's unit. */
  readonly free: number
  /** Absent where no equilibrium was found. */
  readonly balance?: Balance
}

/**
 * Amplitude for impending opening at the least friction: springs and weight push open.
 *
 * @param frame with the motion opening
 * @returns undefined where the port does no work (its amplitude is a pole there)
 */
export function effortToHold(bench: ForceBench, frame: ForceFrame, asked: EffortAsked): Effort | undefined {
  return effortOf(holdSearch(bench, frame, asked))
}

/**
 * Amplitude for impending closing at the most friction: springs and weight push open.
 *
 * @param frame with the motion closing
 */
export function effortToClose(bench: ForceBench, frame: ForceFrame, asked: EffortAsked): Effort | undefined {
  return effortOf(closeSearch(bench, frame, asked))
}

/** The question behind `effortToHold`, for a caller who needs the amplitude only. */
export function holdSearch(bench: ForceBench, frame: ForceFrame, asked: EffortAsked): RestSearch | undefined {
  const row = standingLoad(bench, frame, 'held')
  asked.addLoads(row)
  return searchFor(frame, { port: asked.port, load: row.out }, bench.leversOf('moving', 'least'))
}

/** The question behind `effortToClose`. */
export function closeSearch(bench: ForceBench, frame: ForceFrame, asked: EffortAsked): RestSearch | undefined {
  const row = standingLoad(bench, frame, 'closing')
  asked.addLoads(row)
  return searchFor(frame, { port: asked.port, load: row.out }, bench.leversOf('moving', 'most'))
}

function searchFor(frame: ForceFrame, given: PortAndLoad, levers: Float64Array): RestSearch | undefined {
  const prepared = prepare(frame, given)
  return prepared && { prepared, levers, either: slowJoints(frame), towards: 1 }
}

function effortOf(search: RestSearch | undefined): Effort | undefined {
  if (!search) return undefined
  const balance = worstRest(search)
  return { free: search.prepared.freeAmplitude, ...(balance && { balance }) }
}
