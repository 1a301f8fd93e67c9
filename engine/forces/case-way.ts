/** Efforts of one load case at one posture: to close against it, to hold it, and without friction. */
import type { LoadCase } from '../design/design.ts'
import { effortToClose, effortToHold, portRow } from './effort.ts'
import type { ForceBench } from './force-bench.ts'
import type { FramePair } from './force-frame.ts'
import { addLoadCase } from './loads.ts'

export interface CaseEfforts {
  /** Absent where the drive does no work (at dead centre) or no equilibrium was found. */
  readonly close?: number
  readonly hold?: number
  readonly free?: number
  /** Largest force in any joint, closing or holding, N. */
  readonly pinForceMost_N: number
}

/** @param loadCase undefined for the finger with springs and weight alone */
export function caseEfforts(bench: ForceBench, frames: FramePair, loadCase: LoadCase | undefined): CaseEfforts {
  const addLoads = (row: Parameters<typeof addLoadCase>[0]): void => {
    if (loadCase) addLoadCase(row, loadCase)
  }
  const port = portRow(bench, frames.closing, { kind: 'drive' })
  const close = effortToClose(bench, frames.closing, { port, addLoads })
  const hold = effortToHold(bench, frames.opening, { port, addLoads })
  const forces = [close?.balance, hold?.balance].flatMap((balance) => (balance ? [...balance.magnitudes] : []))
  return {
    ...(close?.balance && { close: close.balance.amplitude }),
    ...(hold?.balance && { hold: hold.balance.amplitude }),
    ...(hold && { free: hold.free }),
    pinForceMost_N: Math.max(0, ...forces),
  }
}

/** Whether a load case has anything that acts in the plane of motion. */
export function actsInPlane(loadCase: LoadCase): boolean {
  return loadCase.forces.length > 0 || loadCase.couples.length > 0
}
