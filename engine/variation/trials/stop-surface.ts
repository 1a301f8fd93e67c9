/** What lies on a stop or has gone from it: the gap of every stop is another. */
import type { TrialGround, Tried } from './trial.ts'
import { increased, typedIn } from './typed-again.ts'

/** A grain of sand that is not crushed between hard-coated surfaces. */
const grit = '0.2 mm'
/** Hard coat and film of both surfaces together. */
const wear = '0.1 mm'

/** A grain lifts the contact: the finger stops earlier, further from dead centre. */
export function gritAtTheStop(ground: TrialGround): Tried {
  const says =
    `A grain of ${grit} lies in the contact of every stop, so that the finger stops that much earlier. ` +
    'Size: fine sand, 0.06 to 0.2 mm (from memory); taken at its largest.'
  return gapChanged(ground, { by: `-${grit}`, says })
}

/** Material gone from the contact: the finger closes further, nearer to dead centre. */
export function wornStop(ground: TrialGround): Tried {
  const says =
    `Every stop has lost ${wear} in its contact, so that the finger closes that much further. ` +
    'Size: assumed, a hard coat and film of about 0.05 mm gone from both surfaces (from memory); measure a worn finger.'
  return gapChanged(ground, { by: wear, says })
}

function gapChanged({ desk, evaluation }: TrialGround, { by, says }: { readonly by: string; readonly says: string }): Tried {
  const { stops } = evaluation.design
  if (stops.length === 0) return { cannot: 'the design has no stop' }
  const places = stops.map(({ id }) => ['stops', id, 'gap'])
  return { says, changes: places.map((place) => ({ kind: 'set', place, value: increased(typedIn(desk, place), by) })) }
}
