import type { Working, WorkingValue } from '../../figures/evaluation.ts'
import type { AgainstFriction } from '../spread/against-friction.ts'
import { countLine } from './share-working.ts'

/** Digits that tell two frictions apart. */
const FRICTION_digits = 3

/** How the window against friction comes about. */
export function againstFrictionWorking({ pair, slices }: AgainstFriction): Working {
  const range = ([name, value]: readonly [string, number]): WorkingValue => ({ name, value, unit: '1', digits: FRICTION_digits })
  return {
    method:
      'The counted sets are sorted by their friction at rest into slices of its range; in each the closed margin, the angle from which it jams and the angle from which the load slips are told from the least to the most of its sets. Sizes vary in every slice.',
    formulas: [
      '\\text{clear of the jam: } \\min \\delta - \\max \\delta_{\\text{jam}} \\qquad \\text{of slipping: } \\min \\delta_{\\text{slip}} - \\max \\delta',
    ],
    inputs: [
      range(['at rest, least', pair.rest.least]),
      range(['at rest, likely', pair.rest.likely]),
      range(['at rest, most', pair.rest.most]),
      countLine(
        'sets sorted',
        slices.reduce((sum, { sets_count }) => sum + sets_count, 0),
      ),
    ],
    steps: slices.flatMap(({ from, to, margin, jam, slip }): WorkingValue[] => {
      const at = `${from.toFixed(FRICTION_digits)} to ${to.toFixed(FRICTION_digits)}`
      return [
        { name: `${at}: jams at most below`, value: jam.most, unit: 'rad' },
        { name: `${at}: stands at least`, value: margin.least, unit: 'rad' },
        { name: `${at}: stands at most`, value: margin.most, unit: 'rad' },
        slip
          ? { name: `${at}: slips at least from`, value: slip.least, unit: 'rad' }
          : { name: `${at}: slips at least from`, value: 'no set slips', unit: 'words' },
      ]
    }),
    source: 'docs/theory/spread.md, The window against friction',
  }
}
