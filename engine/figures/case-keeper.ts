/** What the keeper has to give so that the closed finger bears its load. */
import type { LoadCase } from '../design/design.ts'
import { effortToHold, portRow } from '../forces/effort.ts'
import { type FramePair, powerIn } from '../forces/force-frame.ts'
import { addLoadCase } from '../forces/loads.ts'
import type { AddToCase } from './case-sheet.ts'
import { line } from './figure-sheet.ts'
import type { Survey } from './survey.ts'

/** Sustaining load (N or N·mm, as the keeper's port) and its ratio to the load. @param frames of the loaded state; absent without one */
export function addKeeper(at: AddToCase, survey: Survey, loadCase: LoadCase, frames: FramePair | undefined): void {
  const { keeper } = loadCase
  if (!keeper || !frames) {
    at('sustainingLoad', {})
    at('keeperRatio', {})
    return
  }
  const port = portRow(survey.bench, frames.opening, keeper.port)
  const closes = powerIn(frames.closing, port) > 0
  const effort = effortToHold(survey.bench, frames.opening, { port, addLoads: (row) => addLoadCase(row, loadCase) })
  const needed = closes && effort?.amplitude !== undefined ? Math.max(0, effort.amplitude) : undefined
  const load = loadCase.forces.reduce((sum, force) => sum + force.force_N, 0)
  const why = closes ? undefined : 'this keeper does not close the finger at its closed posture'
  const allowed = line(
    'allowed on the keeper',
    keeper.allowed,
    keeper.port.kind === 'force' ? 'N' : 'N·mm',
    `loadCases.${loadCase.id}.keeper.allowed`,
  )
  at('sustainingLoad', {
    value: needed,
    why,
    inputs: [allowed],
    steps: effort ? [line('without friction', effort.free, keeper.port.kind === 'force' ? 'N' : 'N·mm')] : [],
  })
  at('keeperRatio', {
    value: needed !== undefined && load > 0 ? needed / load : undefined,
    why: load > 0 ? why : 'this case has no force to compare with',
  })
}
