import type { Working, WorkingValue } from '../../figures/evaluation.ts'
import type { GaugeStudy, SumOfSquares } from '../gauge-study.ts'

const FORMULAS = [
  '\\sigma_e^2 = MS_e \\qquad \\sigma_{po}^2 = \\frac{MS_{po} - MS_e}{r}',
  '\\sigma_o^2 = \\frac{MS_o - MS_{po}}{p\\,r} \\qquad \\sigma_p^2 = \\frac{MS_p - MS_{po}}{o\\,r}',
  '\\sigma_{gauge}^2 = \\sigma_e^2 + \\sigma_{po}^2 + \\sigma_o^2 \\qquad \\sqrt 2\\, \\sigma_p / \\sigma_{gauge}',
]

/** How the variances of a gauge study come about. */
export function gaugeWorking({
  parts,
  appraisers,
  together,
  repeats,
  togetherByChance,
  variance,
  gauge,
  toldApart,
}: GaugeStudy): Working {
  const meanSquare = (name: string, found: SumOfSquares | undefined): readonly WorkingValue[] =>
    found === undefined ? [] : [{ name: `${name}, of ${found.freedom}`, value: found.squares / found.freedom, unit: '1' }]
  const deviation = (name: string, found: number | undefined): readonly WorkingValue[] =>
    found === undefined ? [] : [{ name, value: Math.sqrt(found), unit: 'mm' }]
  return {
    method:
      'Everybody reads every part equally often. The squares of the readings about their means are parted by part, person, both together and repeat; what the means of one kind spread more than the next kind explains is its own variance, never below nothing.',
    formulas: FORMULAS,
    inputs: [
      ...meanSquare('mean square of parts, mm²', parts),
      ...meanSquare('of people, mm²', appraisers),
      ...meanSquare('of both together, mm²', together),
      ...meanSquare('of repeats, mm²', repeats),
    ],
    steps: [
      ...deviation('repeat', variance.repeat),
      ...deviation('both together', variance.together),
      ...deviation('people', variance.appraiser),
      ...deviation('parts', variance.part),
      { name: 'gauge', value: gauge, unit: 'mm' },
      { name: 'told apart', value: toldApart, unit: '1' },
      ...(togetherByChance === undefined
        ? []
        : [{ name: 'both together by chance', value: togetherByChance, unit: '1' as const }]),
    ],
    source: 'docs/theory/inspection.md (D. Montgomery, Introduction to Statistical Quality Control, gauge chapter, from memory)',
  }
}
