import type { Working } from '../../figures/evaluation.ts'
import type { LifeStudy, ShownShare } from '../life-study.ts'

const SOURCE = 'docs/theory/inspection.md, what passed tests show'

/** How the share that passed tests show comes about. @param confidence between 0 and 1 */
export function shownWorking({ passed, failed, silent, share }: ShownShare, confidence: number): Working {
  return {
    method:
      'The lower end of the exact one-sided interval of a share: with any smaller share of good pieces, so few failures would be rarer than the confidence leaves. Runs that ended before what is asked say nothing and are left out.',
    formulas: ['\\sum_{i=0}^{k} \\binom{n}{i} (1-R)^i R^{n-i} = 1 - C', 'k = 0: \\quad R = (1 - C)^{1/n}'],
    inputs: [
      { name: 'n, passed and failed', value: passed + failed, unit: '1' },
      { name: 'k, failed', value: failed, unit: '1' },
      { name: 'left out', value: silent, unit: '1' },
      { name: 'C, confidence', value: confidence, unit: '1' },
    ],
    steps: share === undefined ? [] : [{ name: 'R, shown at least', value: share, unit: '1' }],
    source: `${SOURCE} (C. Clopper and E. Pearson 1934, from memory)`,
  }
}

/** How the law of lives comes about: stated where nothing failed, the likeliest where enough did. */
export function weibullWorking({ asked, runs, byShape, likeliest }: LifeStudy): Working {
  const { life, shape, confidence } = asked
  const inputs = [
    { name: 'n, runs', value: runs.length, unit: '1' as const },
    { name: 'ran together', value: runs.reduce((sum, { reached }) => sum + reached, 0), unit: '1' as const },
    { name: 'L, life asked', value: life, unit: '1' as const },
  ]
  if (likeliest !== undefined)
    return {
      method:
        'The law of lives under which these failures and runs are likeliest. Where the others were stopped is counted as outlasted; no confidence is claimed.',
      formulas: [
        'R(t) = e^{-(t/\\eta)^\\beta}',
        '\\frac{\\sum_i t_i^\\beta \\ln t_i}{\\sum_i t_i^\\beta} - \\frac{1}{\\beta} = \\frac{1}{r}\\sum_{failed} \\ln t_i',
        '\\eta^\\beta = \\tfrac{1}{r} \\textstyle\\sum_i t_i^\\beta',
      ],
      inputs: [...inputs, { name: 'r, failed', value: runs.filter(({ failed }) => failed).length, unit: '1' }],
      steps: [
        { name: 'β, shape', value: likeliest.shape, unit: '1' },
        { name: 'η, scale', value: likeliest.scale, unit: '1' },
        { name: 'R(L)', value: likeliest.outlast, unit: '1' },
      ],
      source: `${SOURCE} (maximum likelihood, common knowledge)`,
    }
  return {
    method:
      'Nothing failed, so the shape of the law of lives is stated and not found. A piece that ran longer than the life counts as more than one, a shorter run as less.',
    formulas: ['\\ln R(L) = \\frac{\\ln (1 - C)}{\\sum_i (t_i/L)^\\beta}'],
    inputs: [
      ...inputs,
      { name: 'β, shape as stated', value: shape, unit: '1' },
      { name: 'C, confidence', value: confidence, unit: '1' },
    ],
    steps: byShape === undefined ? [] : [{ name: 'R(L), shown at least', value: byShape, unit: '1' }],
    source: SOURCE,
  }
}
