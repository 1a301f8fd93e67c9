import type { FrictionPair } from '../../design/design.ts'
import type { Change } from '../../design/edit/change.ts'
import type { TrialGround, Tried } from './trial.ts'

/** Steel on steel without lubrication. */
const dry = {
  moving: { least: 0.1, likely: 0.2, most: 0.3 },
  rest: { least: 0.15, likely: 0.22, most: 0.3 },
} as const
const source =
  'tried dry: steel on steel, unlubricated, 0.10 to 0.30 sliding and 0.15 to 0.30 from rest (Gieck, 7th edition, as quoted on a public table of friction coefficients); likely values set between'

/** Film and grease are gone from every pair of surfaces. What is rougher already stays as it is. */
export function dryPins({ evaluation }: TrialGround): Tried {
  const changes = evaluation.design.frictionPairs.flatMap(dried)
  if (changes.length === 0) return { cannot: 'every friction pair of the design is as dry already' }
  const says =
    'Film and grease are gone from every pair of surfaces: friction 0.10 to 0.30 moving and 0.15 to 0.30 from rest, steel on steel unlubricated ' +
    '(Gieck, 7th edition, as quoted on a public table; other tables go up to 0.78). What is rougher already stays.'
  return { says, changes }
}

function dried(pair: FrictionPair): readonly Change[] {
  const changes = (['moving', 'rest'] as const).flatMap((state) =>
    (['least', 'likely', 'most'] as const).flatMap((bound): readonly Change[] => {
      const value = dry[state][bound]
      return value > pair[state][bound] ? [{ kind: 'set', place: ['friction', pair.name, state, bound], value }] : []
    }),
  )
  return changes.length === 0 ? [] : [...changes, { kind: 'set', place: ['friction', pair.name, 'source'], value: source }]
}
