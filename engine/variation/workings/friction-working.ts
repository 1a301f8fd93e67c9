import type { FrictionPair } from '../../design/design.ts'
import type { Working, WorkingValue } from '../../figures/evaluation.ts'
import type { Coefficients, SurvivedFriction } from '../spread/design-spread.ts'

/** How the range of friction that a design survives comes about. @param drawn the pair as the document states it */
export function frictionWorking({ least, most }: SurvivedFriction, drawn: FrictionPair): Working {
  const range = (name: string, { least, likely, most }: FrictionPair['moving']): readonly WorkingValue[] => [
    { name: `${name}, least`, value: least, unit: '1' },
    { name: `${name}, likely`, value: likely, unit: '1' },
    { name: `${name}, most`, value: most, unit: '1' },
  ]
  return {
    method:
      'The friction of this pair is followed from its likely value outwards in sixteen steps, to twice the width of its range, everything else as drawn; from the first step at which a requirement falls short or cannot be decided the end is found by halving. A requirement that fails between two steps and recovers is passed over.',
    formulas: ['\\mu_{\\text{least}} \\le \\mu \\le \\mu_{\\text{most}}: \\text{ every requirement met}'],
    inputs: [...range('moving', drawn.moving), ...range('at rest', drawn.rest)],
    steps: [...endLines('least', least), ...endLines('most', most)],
    source: 'docs/theory/spread.md, What to change',
  }
}

function endLines(end: string, { moving, rest, beyond }: Coefficients): readonly WorkingValue[] {
  return [
    { name: `${end}, moving`, value: moving, unit: '1' },
    { name: `${end}, at rest`, value: rest, unit: '1' },
    { name: `beyond the ${end}`, value: beyond.length === 0 ? 'nothing falls short' : beyond.join(', '), unit: 'words' },
  ]
}
