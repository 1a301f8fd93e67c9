import type { Addition } from './addition.ts'
import { answered, askChoice, askName, askQuantity } from './asks.ts'
import { freeName, type Ground, putInto } from './ground.ts'
import { firstMaterial } from './plate.ts'

const roles = ['other', 'proximal', 'middle', 'distal', 'link', 'roller']

/** A small plate with a hole at its own origin, where it is told to stand. It is loose until a pin holds it. */
export function newPart(ground: Ground): Addition {
  const asks = [
    askName(freeName(ground, ['parts'], 'newPart')),
    askChoice('role', roles),
    askQuantity('x', 'length', { label: 'x as drawn', typed: '0 mm' }),
    askQuantity('y', 'length', { label: 'y as drawn', typed: '20 mm' }),
    askQuantity('diameter', 'length', { label: 'hole diameter', typed: '3 mm' }),
  ]
  const propose: Addition['propose'] = (inputs) => {
    const { name, role, x, y, diameter } = answered(asks, inputs)
    const part = {
      role,
      ...firstMaterial(ground),
      outline: [
        ['-4 mm', '-4 mm'],
        ['16 mm', '-4 mm'],
        ['16 mm', '4 mm'],
        ['-4 mm', '4 mm'],
      ],
      holes: { hole: { x: '0 mm', y: '0 mm', diameter } },
      drawn: { x, y, turn: '0 deg' },
    }
    return { value: [putInto(ground, ['parts'], [name, part])] }
  }
  return { kind: 'part', title: 'A part with a hole', asks, propose }
}
