import type { Change } from '../../design/edit/change.ts'
import type { TrialGround, Tried } from './trial.ts'
import { halved, typedIn } from './typed-again.ts'

/** Typed values of a spring that its force is proportional to. */
const strengths = ['rate', 'preload', 'initial'] as const

/** Every spring gives half of its force, at every posture. */
export function returnSpringAtHalf({ desk, evaluation }: TrialGround): Tried {
  const { springs } = evaluation.design
  if (springs.length === 0) return { cannot: 'the design has no spring' }
  const changes = springs.flatMap(({ id }) =>
    strengths.flatMap((strength): readonly Change[] => {
      const place = ['springs', id, strength]
      const typed = typedIn(desk, place)
      return typed === undefined ? [] : [{ kind: 'set', place, value: halved(typed) }]
    }),
  )
  const says =
    `${springs.length === 1 ? 'The spring gives' : 'All springs give'} half of what ${springs.length === 1 ? 'it' : 'they'} gave: rate and preload are halved. ` +
    'A trial of what is in reserve, not of a fault that was measured; one of two springs broken is such a case.'
  return { says, changes }
}
