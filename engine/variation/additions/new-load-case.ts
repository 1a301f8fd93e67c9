import { partThings } from '../../design/edit/choices.ts'
import type { Addition, Ask } from './addition.ts'
import { answered, askChoice, askName, askQuantity } from './asks.ts'
import { freeName, type Ground, putInto } from './ground.ts'

/** A force at a pad of a part that moves. None while no such part has a pad. */
export function newLoadCase(ground: Ground): Addition | undefined {
  const { desk, design } = ground
  const mount = design.parts[0].id
  const pads = partThings(desk, 'pads').filter((pad) => !pad.startsWith(`${mount}.`))
  if (pads.length === 0) return undefined
  const parts = design.parts.map(({ id }) => id)
  const asks: readonly Ask[] = [
    askName(freeName(ground, ['loadCases'], 'newLoad')),
    askChoice('at', pads),
    askQuantity('force', 'force', { typed: '20 N' }),
    askQuantity('direction', 'angle', { typed: '90 deg' }),
    askChoice('frame', parts, { label: 'counted in the frame of', typed: pads[0].split('.')[0] }),
    askChoice('acts', ['closed', 'travel']),
  ]
  const propose: Addition['propose'] = (inputs) => {
    const { name, at, force, direction, frame, acts } = answered(asks, inputs)
    return { value: [putInto(ground, ['loadCases'], [name, { forces: [{ at, force, direction, frame }], acts }])] }
  }
  return { kind: 'load case', title: 'A load: a force at a pad', asks, propose }
}
