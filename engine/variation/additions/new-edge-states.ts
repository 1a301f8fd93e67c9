import type { Change } from '../../design/edit/change.ts'
import type { Addition } from './addition.ts'
import { answered, askQuantity } from './asks.ts'
import type { Ground } from './ground.ts'

/** Edges of a part after ISO 13715. None while every part that is asked about states them. */
export function newEdgeStates({ design, about }: Ground): Addition | undefined {
  const part = design.parts.find((one) => {
    const isBare = one.outsideEdges === undefined && one.insideEdges === undefined
    return isBare && (about === undefined || about === one.id)
  })
  if (part === undefined) return undefined
  const asks = [
    askQuantity('outsideEdges', 'length', { label: 'outside, at most', typed: '-0.3 mm' }),
    askQuantity('outsideEdgesFrom', 'length', { label: 'outside, at least', typed: '-0.1 mm' }),
    askQuantity('insideEdges', 'length', { label: 'inside, at most', typed: '0.3 mm' }),
  ]
  const propose: Addition['propose'] = (inputs) => {
    const typed = answered(asks, inputs)
    return {
      value: asks.flatMap(({ id }): readonly Change[] =>
        typed[id].trim() === '' ? [] : [{ kind: 'set', place: ['parts', part.id, id], value: typed[id] }],
      ),
    }
  }
  return { kind: 'edge states', title: `Edge states of ${part.name}: − is metal taken off, + may stand over`, asks, propose }
}
