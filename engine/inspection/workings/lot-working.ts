import type { FigureUnit, Working, WorkingValue } from '../../figures/evaluation.ts'
import { CONFIDENCE, type Ratio } from '../capability.ts'
import { shortDeviation } from '../control-limits.ts'
import type { LotStudy } from '../lot-study.ts'
import { twoSidedFactor } from '../tolerance-factor.ts'

/** A size of some millimetres to a hundredth of a micrometre. */
const SIZE_digits = 6

/** How capability, control limits and the interval of one characteristic come about. @param unit of its readings */
export function lotWorking(
  { sample, limits, capability, control, interval, content, normality }: LotStudy,
  unit: FigureUnit,
): Working {
  const { count, mean, deviation, movingRange } = sample
  const own = (name: string, value: number | undefined): readonly WorkingValue[] =>
    value === undefined ? [] : [{ name, value, unit, digits: SIZE_digits }]
  return {
    method:
      'Cp and Cpk set the tolerance against the deviation from one piece to the next, Pp and Ppk against that of all pieces; the control limits stand three short deviations from the mean. Ratios and interval suppose a normal process that nothing but chance moves.',
    formulas: [
      '\\sigma_{short} = \\bar d \\sqrt{\\pi}/2 \\qquad s^2 = \\frac{1}{n-1} \\sum (x_i - \\bar x)^2',
      'C_p = \\frac{U - L}{6 \\sigma} \\qquad C_{pk} = \\frac{\\min(U - \\bar x,\\; \\bar x - L)}{3 \\sigma}',
      'C_p \\sqrt{\\chi^2_{n-1}/(n-1)} \\qquad C_{pk} \\pm z \\sqrt{\\frac{1}{9n} + \\frac{C_{pk}^2}{2(n-1)}}',
      '\\bar x \\pm 3 \\sigma_{short} \\qquad D_4 \\bar d \\qquad \\bar x \\pm k s',
    ],
    inputs: [{ name: 'n, readings', value: count, unit: '1' }, ...own('L', limits.least), ...own('U', limits.most)],
    steps: [
      ...own('x̄, mean', mean),
      ...own('d̄, mean step', movingRange),
      ...own('short deviation', shortDeviation(sample)),
      ...own('s, deviation of all', deviation),
      ...ratio('Cp', capability?.cp),
      ...ratio('Cpk', capability?.cpk),
      ...ratio('Pp', capability?.pp),
      ...ratio('Ppk', capability?.ppk),
      ...own('control limit, lower', control?.least),
      ...own('control limit, upper', control?.most),
      ...own('largest step by chance', control?.stepMost),
      ...(interval === undefined
        ? []
        : [{ name: `k for ${count} readings`, value: twoSidedFactor(count, content), unit: '1' as const }]),
      ...(normality === undefined
        ? []
        : [{ name: 'as far from normal by chance', value: normality.byChance, unit: '1' as const }]),
    ],
    source: `docs/theory/inspection.md; intervals at ${CONFIDENCE}: chi-square for Cp, A. F. Bissell 1990 for Cpk (from memory)`,
  }
}

function ratio(name: string, found: Ratio | undefined): readonly WorkingValue[] {
  return found === undefined ? [] : [{ name, value: found.value, unit: '1' }]
}
