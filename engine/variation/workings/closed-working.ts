import type { Working } from '../../figures/evaluation.ts'
import type { ClosedSpread } from '../closed/closed-spread.ts'
import { countLine } from './share-working.ts'

/** How sets are looked at in their closed posture alone. */
export function closedWorking({ samples, plainly_count }: Pick<ClosedSpread, 'samples' | 'plainly_count'>): Working {
  return {
    method:
      'Each set is put together at its stop and set into equilibrium there, with friction at rest on its worst side. Jam and slip are the margins at which the reserve is nothing and the keeper needs what it is allowed. Where sizes follow their sources in straight lines this goes a short way; the other sets are followed from open to closed.',
    formulas: [
      '\\lambda = -\\frac{\\text{power of the load}}{\\text{power of the port}}',
      '\\text{reserve}(\\delta_{\\text{jam}}) = 0 \\qquad \\text{keeper}(\\delta_{\\text{slip}}) = \\text{allowed}',
    ],
    inputs: [countLine('sets looked at', samples), countLine('of them followed from open to closed', plainly_count)],
    steps: [],
    source: 'docs/theory/spread.md, The hold verdict alone',
  }
}
