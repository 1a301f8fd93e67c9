/** How the gain of a change comes about, and what a combination of tolerances costs. */
import type { Working } from '../../figures/evaluation.ts'
import type { YieldGain } from '../spread/advice.ts'
import type { CentredStop } from '../spread/centred-stop.ts'
import type { PricePoint } from '../spread/price-curve.ts'
import { countLine, shareLine, studentT } from './share-working.ts'

const SOURCE = 'docs/theory/spread.md, What to change'

/** The share of sets that meet everything, before and after. */
export function gainWorking({ value, least, most, before, samples }: YieldGain): Working {
  return {
    method:
      'The first sets of the count are judged once more with the change, so that the luck of the draw cancels. Only sets that change sides count. The interval is Student’s t over the sixteen scramblings, and never closer than half a set in each of them allows.',
    formulas: [
      '\\Delta = \\frac{1}{n} \\sum (m_i^{\\text{after}} - m_i^{\\text{before}}) \\qquad m = 1 \\text{ where a set meets everything, else } 0',
      '\\Delta \\pm t_{15}\\, s/\\sqrt{16}',
    ],
    inputs: [countLine('n, sets judged both ways', samples), shareLine('share that met everything before', before)],
    steps: [
      shareLine('Δ, change of the share', value),
      studentT(),
      shareLine('Δ from', least),
      shareLine('Δ to', most),
      shareLine('share after', before + value),
    ],
    source: SOURCE,
  }
}

/** Where the stop would stand, in the middle of the hold window. */
export function stopWorking({ setBack_mm, margin_rad, jam_rad, slip_rad }: CentredStop): Working {
  return {
    method:
      'The stop is moved, with every size in its middle, until the closed margin is the mean of the angle from which it jams and the angle at which the load slips. It is looked for up to a millimetre either way.',
    formulas: ['\\delta(x) = \\tfrac{1}{2}\\,(\\delta_{\\text{jam}}(x) + \\delta_{\\text{slip}}(x))'],
    inputs: [],
    steps: [
      { name: 'x, stop set back', value: setBack_mm, unit: 'mm' },
      { name: 'δ, closed margin there', value: margin_rad, unit: 'rad' },
      { name: 'jams below', value: jam_rad, unit: 'rad' },
      { name: 'slips above', value: slip_rad, unit: 'rad' },
    ],
    source: SOURCE,
  }
}

/** What a combination of tolerances costs a set. */
export function priceWorking({ price, choices }: PricePoint): Working {
  return {
    method:
      'The prices that the document states for the chosen tolerances, added up. Of all combinations those are judged that no cheaper one is estimated to beat, and what is drawn.',
    formulas: ['\\text{price} = \\sum \\text{price of each size}'],
    inputs: choices.map(({ size, typed }) => {
      return { name: size.words, value: typed ?? 'as drawn', unit: 'words', from: 'variation.prices' } as const
    }),
    steps: [{ name: 'price of a set, in the currency of the document', value: price, unit: '1', digits: PRICE_digits }],
    source: `${SOURCE}, What tolerances cost`,
  }
}

const PRICE_digits = 5
