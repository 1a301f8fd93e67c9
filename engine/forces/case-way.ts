/** Efforts of one load case at one posture: to close against it, to hold it, and without friction. */
import type { LoadCase } from '../design/design.ts'
import type { ForceRow } from '../motion/closure.ts'
import { jointForcesNow, largestForceNow } from './balance.ts'
import { closeSearch, holdQuestion } from './effort.ts'
import type { ForceBench } from './force-bench.ts'
import { emptyRow, type FramePair } from './force-frame.ts'
import { addLoadCase } from './loads.ts'
import { worstAmplitude } from './rest-state.ts'

export interface CaseEfforts {
  /** Absent where the drive does no work (at dead centre) or no equilibrium was found. */
  readonly close?: number
  readonly hold?: number
  readonly free?: number
  /** Joint forces of `close` and of `hold`, two numbers a joint as `jointForcesNow` gives them; the second is absent too where friction holds. */
  readonly closing?: Float64Array
  readonly holding?: Float64Array
  /** Largest force in any joint, closing or holding, N. */
  readonly pinForceMost_N: number
}

/** What efforts are asked for. */
export interface EffortsAsked {
  /** Unit pattern of the drive at the posture. */
  readonly port: Float64Array
  /** Undefined for the finger with springs and weight alone: of that no joint forces are kept. */
  readonly loadCase: LoadCase | undefined
}

/** Efforts at a posture, one load case or none. */
export function caseEfforts(bench: ForceBench, frames: FramePair, { port, loadCase }: EffortsAsked): CaseEfforts {
  const load = emptyRow(frames.closing)
  if (loadCase) addLoadCase(load, loadCase)
  const addLoads = ({ out }: ForceRow): void => {
    for (let column = 0; column < out.length; column++) out[column] += load.out[column]
  }
  const found: { -readonly [Key in keyof CaseEfforts]: CaseEfforts[Key] } = { pinForceMost_N: 0 }
  const closing = closeSearch(bench, frames.closing, { port, addLoads })
  const close = closing && worstAmplitude(closing)
  if (closing && close !== undefined) {
    found.close = close
    if (loadCase) found.closing = jointForcesNow(closing.prepared)
    found.pinForceMost_N = largestForceNow(closing.prepared)
  }
  const holding = holdQuestion(bench, frames.opening, { port, addLoads })
  if (!holding) return found
  found.free = holding.free
  const hold = holding.search ? worstAmplitude(holding.search) : 0
  if (hold !== undefined) found.hold = hold
  if (holding.search && hold !== undefined) {
    if (loadCase) found.holding = jointForcesNow(holding.search.prepared)
    found.pinForceMost_N = Math.max(found.pinForceMost_N, largestForceNow(holding.search.prepared))
  }
  return found
}

/** Whether a load case has anything that acts in the plane of motion. */
export function actsInPlane(loadCase: LoadCase): boolean {
  return loadCase.forces.length > 0 || loadCase.couples.length > 0
}
