import type { FigureUnit } from '../../design/figure-names.ts'
import type { Addition, Ask } from './addition.ts'
import { answered, askChoice, askName } from './asks.ts'
import { freeName, type Ground, putInto } from './ground.ts'

/** A bound that can be typed for a figure of each unit. */
const firstBounds: Readonly<Record<Exclude<FigureUnit, 'words'>, string>> = {
  rad: '0 deg',
  mm: '0 mm',
  N: '0 N',
  N·mm: '0 N*mm',
  'N·mm per pin': '0 N*mm',
  MPa: '0 MPa',
  '1': '0',
  'yes or no': 'yes',
}

/** A figure with a bound and the reason for it: first one that nothing asks for yet. */
export function newRequirement(ground: Ground): Addition {
  const { desk, design } = ground
  const figures = desk.figures.filter(({ unit }) => unit !== 'words')
  const first = figures.find(({ id }) => !design.requirements.some(({ figure }) => figure === id)) ?? figures[0]
  const asks: readonly Ask[] = [
    askName(freeName(ground, ['requirements'], 'newRequirement')),
    askChoice(
      'figure',
      figures.map(({ id }) => id),
      { typed: first.id },
    ),
    askChoice('bound', ['atLeast', 'atMost']),
    { ...bound, typed: first.unit === 'words' ? '' : firstBounds[first.unit] },
    { ...words, id: 'reason', label: 'reason', typed: 'The reason is still to be written down.' },
    { ...words, id: 'source', label: 'source', typed: 'workshop’s own rule' },
  ]
  const propose: Addition['propose'] = (inputs) => {
    const { name, figure, bound: side, value, reason, source } = answered(asks, inputs)
    const unit = figures.find(({ id }) => id === figure)?.unit
    const asked = unit === 'yes or no' ? { is: value !== 'no' } : { [side]: value }
    return { value: [putInto(ground, ['requirements'], [name, { figure, ...asked, reason, source }])] }
  }
  return { kind: 'requirement', title: 'A requirement: a figure with its bound', asks, propose }
}

const bound = {
  id: 'value',
  label: 'value',
  kind: 'quantity',
  needed: 'a quantity in the unit of the figure, or yes or no',
} as const
const words = { kind: 'text', needed: 'text' } as const
