/** The largest force that each stop takes, as the strength of its contact asks for it. */
import { standingLoad } from '../forces/force-bench.ts'
import { framesAt } from '../forces/force-frame.ts'
import { stopBand } from '../forces/stop-force.ts'
import type { NotFound, Strength } from '../strength/strength.ts'
import type { CaseFound } from './case-figures.ts'
import type { Survey } from './survey.ts'

const UNTOUCHED: NotFound = { why: 'nothing touches it on the travel', spared: true }

/**
 * Of each stop the largest force, N, or why there is none.
 *
 * The stop that ends the travel takes what the load cases press on it at rest, the one that ends the opening what springs and weight do.
 */
export function stopForces(survey: Survey, cases: readonly CaseFound[]): readonly (number | Strength)[] {
  const { design, path } = survey
  return design.stops.map((_, index) => {
    if (path.end.by === 'stop' && path.end.stop === index) return forceWhenClosed(cases)
    return path.openStop === index ? forceWhenOpen(survey, index) : UNTOUCHED
  })
}

function forceWhenClosed(cases: readonly CaseFound[]): number | Strength {
  const open = cases.find(({ stopForceMost }) => typeof stopForceMost?.value !== 'number')
  if (open) return { why: `${open.loadCase.name}: ${open.stopForceMost?.why ?? 'no equilibrium was found when closed'}` }
  const hardest = hardestOnStop(cases)
  return hardest ? pressOf(hardest) : 0
}

/** The load case that presses hardest on the stop that ends the travel; undefined where none is known to press. */
export function hardestOnStop(cases: readonly CaseFound[]): CaseFound | undefined {
  return cases.reduce<CaseFound | undefined>(
    (most, one) => (pressOf(one) > (most === undefined ? 0 : pressOf(most)) ? one : most),
    undefined,
  )
}

function pressOf({ stopForceMost }: CaseFound): number {
  return typeof stopForceMost?.value === 'number' ? stopForceMost.value : 0
}

function forceWhenOpen({ bench, nodes, design }: Survey, stop: number): number | Strength {
  const frames = framesAt(bench.room, nodes[0])
  const load = frames && standingLoad(bench, frames.opening, 'held')
  const band = load && stopBand(bench, frames.opening, { stop: design.stops[stop], load: load.out })
  return band?.most_N ?? { why: 'no largest force of this stop was found when the finger is open' }
}
