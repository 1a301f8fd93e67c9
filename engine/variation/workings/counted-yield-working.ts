import type { Working } from '../../figures/evaluation.ts'
import { targetVerdict, type Yield } from '../spread/yields.ts'
import { countLine, shareLine, shareWorking } from './share-working.ts'

/** How the share of sets that meet a requirement, or all of them, comes about, and what it says of the share that is wanted. */
export function countedYieldWorking(counted: Yield, target_ratio: number): Working {
  const { met, short, undecided, saved_ratio } = counted
  const { method, formulas, inputs, steps, source } = shareWorking(met, COUNTS)
  const isSaved = saved_ratio !== undefined
  return {
    method,
    formulas: [
      ...formulas,
      '\\text{met: } p_{\\text{least}} \\ge p_{\\text{wanted}} \\qquad \\text{short: } 1 - q_{\\text{least}} < p_{\\text{wanted}}',
      ...(isSaved ? ['\\text{chance would need } \\frac{q\\,(1-q)/n}{s_q^2/16} \\text{ times as many}'] : []),
    ],
    inputs: [
      ...inputs,
      countLine('of them short', Math.round(short.value * short.samples)),
      countLine('of them undecided', Math.round(undecided.value * undecided.samples)),
      shareLine('wanted share', target_ratio),
    ],
    steps: [
      ...steps,
      shareLine('q, share that falls short', short.value),
      shareLine('q from', short.least),
      ...(isSaved ? [shareLine('chance would need, times', saved_ratio)] : []),
      { name: 'verdict', value: targetVerdict(counted, target_ratio), unit: 'words' },
    ],
    source,
  }
}

const COUNTS =
  'Each set is judged by itself, as the design is; one that fails several requirements fails once. A set that cannot be built, assembled or closed counts as short in hold and return.'
