/** Between which forces the stop may press under a load. */
import type { LoadCase } from '../design/design.ts'
import { standingLoad } from '../forces/force-bench.ts'
import type { FramePair } from '../forces/force-frame.ts'
import { addLoadCase } from '../forces/loads.ts'
import { stopBand } from '../forces/stop-force.ts'
import type { AddToCase } from './case-sheet.ts'
import { type FigureEntry, line } from './figure-sheet.ts'
import type { Survey } from './survey.ts'

const WEDGES = 'at rest friction could wedge the finger onto its stop with any force: there is no largest'

/** Least and largest force of the stop, N. @returns the entry of the largest */
export function addStopBand(at: AddToCase, survey: Survey, loadCase: LoadCase, frames: FramePair | undefined): FigureEntry {
  const { path, bench, design } = survey
  const stop = path.end.by === 'stop' ? design.stops[path.end.stop] : undefined
  if (!stop || !frames) {
    const entry = stop ? {} : { why: 'the travel does not end at a stop' }
    at('stopForceLeast', entry)
    at('stopForceMost', entry)
    return entry
  }
  const load = standingLoad(bench, frames.opening, 'stopped')
  addLoadCase(load, loadCase)
  const band = stopBand(bench, frames.opening, { stop, load: load.out })
  const inputs = [line(`at rest, most: ${stop.friction.name}`, stop.friction.rest.most, '1', `stops.${stop.id}.friction`)]
  at('stopForceLeast', { value: band?.least_N, inputs })
  const wedges = band && band.most_N === undefined
  const most: FigureEntry = wedges ? { why: WEDGES, beyond: 'above any', inputs } : { value: band?.most_N, inputs }
  at('stopForceMost', most)
  return most
}
