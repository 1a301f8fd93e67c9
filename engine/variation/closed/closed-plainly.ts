import { surveyTravel } from '../../figures/survey.ts'
import { assemble } from '../../motion/assemble.ts'
import { mechanismOf } from '../../motion/mechanism.ts'
import { makePathBench } from '../../motion/path.ts'
import { toggleMargin } from '../../motion/toggle-margin.ts'
import { travelPath } from '../../motion/travel-path.ts'
import type { Variation } from '../sources/source.ts'
import type { ClosedNumbers } from './closed-finger.ts'

/** The closed numbers of a set by the road of `evaluate`: read in full, put together, followed from open to closed. NaN where it does not close. */
export function closedPlainly(variation: Variation, values: ArrayLike<number>, out: ClosedNumbers): void {
  out.fill(Number.NaN)
  const design = variation.setOf(values).value
  if (!design) return
  const mechanism = mechanismOf(design)
  const drawn = mechanism.columns_count === mechanism.rows_count + 1 ? assemble(mechanism).posture : undefined
  if (!drawn) return
  const path = travelPath(makePathBench(mechanism), drawn)
  if (path?.end.by !== 'stop') return
  const { nodes, reserves } = surveyTravel(path, drawn)
  for (const [index, toggle] of path.toggles.entries()) out[index] = toggleMargin(toggle, nodes[nodes.length - 1].posture)
  out[path.toggles.length] = reserves[reserves.length - 1]?.fromRest ?? Number.NaN
}
