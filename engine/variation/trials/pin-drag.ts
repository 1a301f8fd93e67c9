/** What resists the turning of the pins whatever the load: thick grease at all of them, a glove at the joints of the finger. */
import { fingerJoints } from '../../motion/flexion.ts'
import { mechanismOf } from '../../motion/mechanism.ts'
import type { TrialGround, Tried } from './trial.ts'
import { increased, multiplied, typedIn } from './typed-again.ts'

/** How much thicker grease is in the cold. */
const thickening = 10
/** What a glove adds at each joint of the finger. */
const glove = '5 N*mm'

/** Grease that is stiff with cold: every drag that the design states is ten times itself. */
export function greaseInTheCold({ desk, evaluation }: TrialGround): Tried {
  const places = evaluation.design.pins.map(({ id }) => ['pins', id, 'drag'])
  const changes = places.flatMap((place) => {
    const typed = typedIn(desk, place)
    return typed === undefined ? [] : [{ kind: 'set', place, value: multiplied(typed, thickening) } as const]
  })
  if (changes.length === 0) return { cannot: 'no pin of the design states a drag; measure what turns an unloaded pin' }
  const says =
    `The grease is stiff with cold: the drag of ${changes.length === 1 ? 'the pin' : `${changes.length} pins`} is ${thickening} times what it was. ` +
    'Factor: common lithium grease between +20 and −20 °C, trade, from memory; cool a finger and measure.'
  return { says, changes }
}

/** A glove is pulled over the finger: it bends with every joint of it. */
export function gloved({ desk, evaluation }: TrialGround): Tried {
  const { design } = evaluation
  const joints = fingerJoints(mechanismOf(design)).map(({ pin }) => design.pins[pin].id)
  if (joints.length === 0) return { cannot: 'no pin of the design joins two phalanges' }
  const says =
    `A glove is pulled over the finger and drags by ${glove.replace('*', '·')} at each of its joints (${joints.join(', ')}). ` +
    'Size: assumed, nobody has measured it; bend the glove’s empty finger with a spring balance.'
  const places = joints.map((id) => ['pins', id, 'drag'])
  return { says, changes: places.map((place) => ({ kind: 'set', place, value: increased(typedIn(desk, place), glove) })) }
}
