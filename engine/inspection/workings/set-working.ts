import type { FigureUnit, Working, WorkingValue } from '../../figures/evaluation.ts'
import { foundOf, limitsFor, type Reading } from '../measured-set.ts'
import type { MeasuredSpread } from '../measured-spread.ts'

/** A size of some millimetres to a hundredth of a micrometre. */
const SIZE_digits = 6

/** How the yield of a measured set comes about. */
export function yieldWorking({ yields, open, asked }: MeasuredSpread): Working {
  const { met, undecided } = yields.all
  return {
    method:
      'What was measured stands where it was found, even within what its gauge leaves open; what was not measured varies as on the drawing, friction as it is typed. Each way is a finger that is worked out, and those that meet every requirement are counted.',
    formulas: ['u = m / N', '\\text{open by a gauge: uniform over } [x - U,\\; x + U]'],
    inputs: [
      { name: 'N, ways counted', value: asked.samples, unit: '1' },
      { name: 'seed', value: asked.seed, unit: '1' },
      { name: 'sizes, springs and frictions that vary', value: open.length, unit: '1' },
    ],
    steps: [
      { name: 'u, share that meets everything', value: met.value, unit: '1' },
      { name: 'at least', value: met.least, unit: '1' },
      { name: 'at most', value: met.most, unit: '1' },
      { name: 'share that cannot be decided', value: undecided.value, unit: '1' },
    ],
    source: 'docs/theory/inspection.md, yield of a measured set; docs/theory/spread.md, counted samples',
  }
}

/** How a reading is judged against its limits, though no gauge is exact. @param unit of its characteristic */
export function guardWorking(reading: Reading, unit: FigureUnit): Working {
  const found = foundOf(reading)
  const { least, most } = limitsFor(reading)
  const half = (found.most - found.least) / 2
  const own = (name: string, value: number | undefined): readonly WorkingValue[] =>
    value === undefined ? [] : [{ name, value, unit, digits: SIZE_digits }]
  return {
    method:
      'A size is shown to be within its limits where everything that the gauge leaves open lies within them, and outside where all of it lies outside of one. Between them nothing is shown with this gauge.',
    formulas: ['L \\le x - U, \\quad x + U \\le T: \\text{ within}', 'x + U < L \\text{ or } x - U > T: \\text{ outside}'],
    inputs: [...own('L, least allowed', least), ...own('T, most allowed', most), ...own('U, left open either way', half)],
    steps: [
      ...own('x − U', found.least),
      ...own('x + U', found.most),
      ...own('accepted from', least === undefined ? undefined : least + half),
      ...own('accepted up to', most === undefined ? undefined : most - half),
    ],
    source: 'docs/theory/inspection.md; ISO 14253-1, decision rules, from memory',
  }
}
