/** Small things that stand by themselves: a dimension, a hole or a pad on a part. */
import type { Addition } from './addition.ts'
import { answered, askChoice, askName, askQuantity } from './asks.ts'
import { freeName, freeNameOnParts, type Ground, putInto } from './ground.ts'

/** A named size for expressions. */
export function newDimension(ground: Ground): Addition {
  const value = {
    id: 'value',
    label: 'value',
    kind: 'quantity',
    typed: '10 mm',
    needed: 'a quantity with its unit, or an expression',
  } as const
  const asks = [askName(freeName(ground, ['dimensions'], 'newDimension')), value]
  const propose: Addition['propose'] = (inputs) => {
    const { name, value: typed } = answered(asks, inputs)
    return { value: [putInto(ground, ['dimensions'], [name, typed])] }
  }
  return { kind: 'dimension', title: 'A dimension', asks, propose }
}

const partIds = ({ design }: Ground): readonly string[] => design.parts.map(({ id }) => id)

/** A hole in a part. */
export function newHole(ground: Ground): Addition {
  const asks = [
    askChoice('part', partIds(ground), { typed: ground.about ?? partIds(ground)[0] }),
    askName(freeNameOnParts(ground, 'newHole')),
    askQuantity('x', 'length', { typed: '0 mm' }),
    askQuantity('y', 'length', { typed: '0 mm' }),
    askQuantity('diameter', 'length', { typed: '3 mm' }),
  ]
  const propose: Addition['propose'] = (inputs) => {
    const { part, name, x, y, diameter } = answered(asks, inputs)
    return { value: [putInto(ground, ['parts', part, 'holes'], [name, { x, y, diameter }])] }
  }
  return { kind: 'hole', title: 'A hole in a part', asks, propose }
}

/** A point of a part that touches the world. */
export function newPad(ground: Ground): Addition {
  const asks = [
    askChoice('part', partIds(ground), { typed: ground.about ?? partIds(ground).at(-1) ?? '' }),
    askName(freeNameOnParts(ground, 'newPad')),
    askQuantity('x', 'length', { typed: '10 mm' }),
    askQuantity('y', 'length', { typed: '-5 mm' }),
  ]
  const propose: Addition['propose'] = (inputs) => {
    const { part, name, x, y } = answered(asks, inputs)
    return { value: [putInto(ground, ['parts', part, 'pads'], [name, [x, y]])] }
  }
  return { kind: 'pad', title: 'A pad on a part', asks, propose }
}
