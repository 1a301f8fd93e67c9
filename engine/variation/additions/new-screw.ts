import { screwClasses, threads } from '../../design/screws/thread-rows.ts'
import type { Addition } from './addition.ts'
import { answered, askChoice, askName, askQuantity } from './asks.ts'
import { freeName, type Ground, putInto, typedAt } from './ground.ts'

/** A screw in a thread of a part. It holds the mount where its place and the way it pulls are typed. */
export function newScrew(ground: Ground): Addition {
  const { parts, screws = [] } = ground.design
  const [known] = screws
  const like = (key: string, other: string): string =>
    known === undefined ? other : (typedAt(ground, 'screws', known.id, key) ?? other)
  const held = { needed: 'left empty where it does not hold the mount' }
  const asks = [
    askName(freeName(ground, ['screws'], 'newScrew')),
    askChoice(
      'thread',
      threads.map(({ name }) => name),
      { typed: like('thread', 'M3') },
    ),
    askChoice(
      'class',
      screwClasses.map(({ name }) => name),
      { typed: like('class', 'A2-70') },
    ),
    askChoice(
      'in',
      parts.map(({ id }) => id),
      { label: 'in the part' },
    ),
    askQuantity('engagement', 'length', { label: 'thread in grip', typed: like('engagement', '5 mm') }),
    askQuantity('torque', 'couple', { typed: like('torque', '0.5 N*m') }),
    { ...askQuantity('x', 'length', { label: 'holds the mount at x', typed: '' }), ...held },
    { ...askQuantity('y', 'length', { label: 'at y', typed: '' }), ...held },
    { ...askQuantity('pulls', 'angle', { label: 'pulls it towards', typed: '' }), ...held },
  ]
  const propose: Addition['propose'] = (inputs) => {
    const { name, x, y, pulls, ...typed } = answered(asks, inputs)
    const isHolding = [x, y, pulls].some((text) => text.trim() !== '')
    const screw = { ...typed, coefficient: USUAL_COEFFICIENT, ...(isHolding && { holdsMount: { x, y, pulls } }) }
    return { value: [putInto(ground, ['screws'], [name, screw])] }
  }
  return { kind: 'screw', title: 'A screw in a thread', asks, propose }
}

/** Torque over preload and diameter of a screw as it comes, about 0.2: common practice (Shigley, section 8-8, from memory). */
const USUAL_COEFFICIENT = 0.2
