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
  let most_N = 0
  for (const { loadCase, stopForceMost } of cases) {
    const { value, why = 'no equilibrium was found when closed' } = stopForceMost ?? {}
    if (typeof value !== 'number') return { why: `${loadCase.name}: ${why}` }
    most_N = Math.max(most_N, value)
  }
  return most_N
}

function forceWhenOpen({ bench, nodes, design }: Survey, stop: number): number | Strength {
  const frames = framesAt(bench.room, nodes[0])
  const load = frames && standingLoad(bench, frames.opening, 'held')
  const band = load && stopBand(bench, frames.opening, { stop: design.stops[stop], load: load.out })
  return band?.most_N ?? { why: 'no largest force of this stop was found when the finger is open' }
}
