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
import { againstMotion, amplitudeInClosedForm, type Balance, isPrepared, type PortAndLoad, prepare } from './balance.ts'
import { isContraction } from './certain-sides.ts'
import { isMildOnDyads, onlyTurnsLead } from './dyad-friction.ts'
import { type ForceBench, standingLoad } from './force-bench.ts'
import { emptyRow, type ForceFrame, slowJoints } from './force-frame.ts'
import { fillGeneral } from './general-way.ts'
import { addPort } from './loads.ts'
import { type RestSearch, worstAmplitude, worstRest } from './rest-state.ts'
import { dragPort } from './return-reserve.ts'

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
  /** With friction; absent where no equilibrium was found. */
  readonly amplitude?: number
  /** Absent as well where friction holds the load with no effort at all: then the amplitude is 0 and no state is singled out. */
  readonly balance?: Balance
}

/**
 * Amplitude for impending opening at the least friction: springs and weight push open.
 *
 * @param frame with the motion opening
 * @returns undefined where the port does no work (its amplitude is a pole there)
 */
export function effortToHold(bench: ForceBench, frame: ForceFrame, asked: EffortAsked): Effort | undefined {
  const question = holdQuestion(bench, frame, asked)
  if (!question) return undefined
  return question.search ? effortOf(question.search) : { free: question.free, amplitude: 0 }
}

/** The question behind `effortToHold`, for a caller who needs the amplitude only. */
export interface HoldQuestion {
  /** Without friction, in the port's unit. */
  readonly free: number
  /** Absent where friction holds the load with no effort at all. */
  readonly search?: RestSearch
}

/** @returns undefined where the port does no work */
export function holdQuestion(bench: ForceBench, frame: ForceFrame, asked: EffortAsked): HoldQuestion | undefined {
  const search = holdSearch(bench, frame, asked)
  if (!search) return undefined
  const free = search.prepared.freeAmplitude
  if (frictionHolds(bench, search, asked)) return { free }
  const again = isPrepared(search.prepared) ? search : holdSearch(bench, frame, asked)
  return again && { free, search: again }
}

/**
 * Whether friction at its least holds what the port is asked to hold, so that no effort is needed.
 *
 * Inside the running jam the equation for the effort has solutions that mean nothing: no effort however small lets the finger
 * open. So the drag at the pins is asked, which has no pole there. Where the effort is a continuous function of friction it stands as
 * it is; that spares most postures the second question. Afterwards the port's question has to be prepared again.
 */
function frictionHolds(bench: ForceBench, search: RestSearch, asked: EffortAsked): boolean {
  const { prepared } = search
  if (prepared.freeAmplitude <= 0 || isContinuous(search)) return false
  const row = standingLoad(bench, prepared.frame, 'held')
  asked.addLoads(row)
  const dragged = prepare(prepared.frame, { port: dragPort(prepared.frame), load: row.out })
  const reserve = dragged && worstAmplitude({ ...search, prepared: dragged })
  return reserve !== undefined && reserve <= 0
}

/**
 * Whether the effort is a continuous function of friction: the closed form answers, or friction is too weak to bend the port's own
 * equation.
 */
function isContinuous({ prepared, levers, either }: RestSearch): boolean {
  if (!either?.includes(1) && amplitudeInClosedForm(prepared, againstMotion(levers)) !== undefined) return true
  const { dyads, room } = prepared
  if (dyads && onlyTurnsLead(dyads, room.twoForce.port) && isMildOnDyads(dyads, levers)) return true
  fillGeneral(prepared)
  return isContraction(prepared.room.magnitudes, levers)
}

/**
 * Amplitude for impending closing at the most friction: springs and weight push open.
 *
 * @param frame with the motion closing
 */
export function effortToClose(bench: ForceBench, frame: ForceFrame, asked: EffortAsked): Effort | undefined {
  return effortOf(closeSearch(bench, frame, asked))
}

function holdSearch(bench: ForceBench, frame: ForceFrame, asked: EffortAsked): RestSearch | undefined {
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
  return { free: search.prepared.freeAmplitude, ...(balance && { amplitude: balance.amplitude, balance }) }
}
