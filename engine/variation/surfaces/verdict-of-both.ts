import type { Verdict } from '../../figures/evaluation.ts'
import { targetVerdict, type Yield } from '../spread/yields.ts'
import type { SurfaceShare } from './surface-share.ts'

/**
 * Whether a yield reaches its target: what the count says; where it leaves that undecided, what surfaces say, if the count holds their share.
 *
 * @param share absent where surfaces were not made, or do not serve
 */
export function verdictOfBoth(
  counted: Pick<Yield, 'met' | 'short'>,
  share: SurfaceShare | undefined,
  target_ratio: number,
): Verdict {
  const verdict = targetVerdict(counted, target_ratio)
  const isHeld = share !== undefined && share.value >= counted.met.least && share.value <= 1 - counted.short.least
  if (verdict !== 'undecided' || !isHeld) return verdict
  if (share.least >= target_ratio) return 'met'
  return share.most < target_ratio ? 'short' : 'undecided'
}
