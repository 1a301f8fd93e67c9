/** How a share of counted sets, with the interval in which it lies, comes about. */
import type { Working, WorkingValue } from '../../figures/evaluation.ts'
import { studentQuantile } from '../../numbers/distributions/student.ts'
import { replicates_count } from '../spread/cloud.ts'
import { type CountedShare, confidence_ratio } from '../spread/share-interval.ts'

/** A share of one set in a hundred thousand still shows. */
export const SHARE_digits = 5

/** Where the theory of counted shares stands. */
const SOURCE = 'docs/theory/spread.md, Samples'

/** A share, 0 to 1, as a line of a working. */
export function shareLine(name: string, value: number): WorkingValue {
  return { name, value, unit: '1', digits: SHARE_digits }
}

/** A whole number as a line of a working. */
export function countLine(name: string, value: number): WorkingValue {
  return { name, value, unit: '1' }
}

/** Student's t of the mean over the replicates, at the confidence of every interval. */
export const studentT = (): WorkingValue => {
  return shareLine('t, Student, 15 degrees of freedom', studentQuantile(replicates_count - 1, (1 + confidence_ratio) / 2))
}

/** @param counts what is counted, as a sentence */
export function shareWorking(share: CountedShare, counts: string): Working {
  const seen = Math.round(share.value * share.samples)
  const { formulas, how, source } = share.by === 'replicates' ? byReplicates : byCounts
  return {
    method: `${counts} ${how}`,
    formulas: ['p = k/n', ...formulas],
    inputs: [countLine('n, counted', share.samples), countLine('k, of them of this kind', seen)],
    steps: [
      shareLine('p, share', share.value),
      ...(share.by === 'replicates' ? deviationLines(share) : []),
      shareLine('interval from', share.least),
      shareLine('interval to', share.most),
    ],
    source: `${SOURCE} (${source})`,
  }
}

const byReplicates = {
  how: 'The count is made of sixteen scramblings that know nothing of one another; the interval is Student’s t of their shares, and never closer than half a set in each of them allows.',
  formulas: ['p \\pm t_{15}\\, s/\\sqrt{16} \\qquad s \\ge \\tfrac{1}{2} \\cdot 16/n'],
  source: 'A. B. Owen, from memory',
}

const byCounts = {
  how: 'One kind of set was seen fewer than ten times, or hardly any set was counted: the interval is the exact one of a count, as if the sets were drawn by chance.',
  formulas: ['B^{-1}_{0.025}(k,\\; n-k+1) \\;\\text{to}\\; B^{-1}_{0.975}(k+1,\\; n-k)'],
  source: 'B the beta distribution; C. Clopper and E. Pearson 1934, from memory',
}

/** The end of the interval that 0 or 1 does not cut off tells the deviation. */
function deviationLines({ value, least, most }: CountedShare): readonly WorkingValue[] {
  const t = studentT()
  const deviation = (Math.max(value - least, most - value) * Math.sqrt(replicates_count)) / Number(t.value)
  return [t, shareLine('s, deviation of the sixteen shares', deviation)]
}
