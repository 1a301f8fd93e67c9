import type { Working, WorkingValue } from '../../figures/evaluation.ts'
import type { SurfaceShare } from '../surfaces/surface-share.ts'
import type { SurfaceYield } from '../surfaces/surface-yield.ts'
import { countLine, shareLine } from './share-working.ts'

/** How a share by surfaces comes about. @param share of all requirements, or of one */
export function surfaceWorking({ judged_count, rows_count, near, clear }: SurfaceYield, share: SurfaceShare): Working {
  return {
    method:
      'Through each number behind a requirement goes a surface over the sources, by least squares through judged sets. Sets in doubt, near nothing, are judged as well and tell what the surfaces get wrong there. Taken for granted is that no number jumps, and that no surface errs by more than four times what it misses where nobody looked.',
    formulas: [
      '\\text{number} \\approx c + \\sum a_i x_i + \\sum b_{ij} x_i x_j + \\sum d_i x_i u \\qquad u = \\sum s_i x_i, \\text{ straight up the number}',
      '\\text{chance} = \\Phi(m/\\sigma) \\text{ of a set of which the surface says } m',
      'p = \\operatorname{mean} \\text{ chance} + \\sum_{\\text{layers}} w_l \\cdot \\operatorname{mean}_l (\\text{judged} - \\text{chance})',
    ],
    inputs: [
      countLine('sets judged', judged_count),
      countLine('rows of sets looked over', rows_count),
      countLine('numbers in doubt', near.length),
      ...near.map(({ behind, miss }): WorkingValue => ({ name: `σ, miss of ${behind.words}`, value: miss, unit: '1' })),
      countLine('numbers clear of their bounds', clear.length),
      ...nearestClear(clear),
    ],
    steps: [shareLine('p, share', share.value), shareLine('interval from', share.least), shareLine('interval to', share.most)],
    source:
      'docs/theory/spread.md, Yield by surfaces (G. E. P. Box and K. B. Wilson 1951; B. Echard, N. Gayton and M. Lemaire 2011; W. G. Cochran; from memory)',
  }
}

/** The one that is clear by the least, in misses of its own surface. */
function nearestClear([first]: SurfaceYield['clear']): readonly WorkingValue[] {
  if (!first || !Number.isFinite(first.misses)) return []
  return [{ name: `nearest of them: ${first.behind.words}, times its miss`, value: Math.floor(first.misses), unit: '1' }]
}
