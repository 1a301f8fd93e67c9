import type { Spring } from '../../design/design.ts'
import type { Change } from '../../design/edit/change.ts'
import type { Desk } from '../../design/edit/desk.ts'
import type { TrialGround, Tried } from './trial.ts'
import { halved, typedIn } from './typed-again.ts'

/** Values of a spring that its force is proportional to; what its wire gives is typed out first. */
function strengthsOf(spring: Spring): Readonly<Record<string, string | undefined>> {
  if (spring.kind === 'torsion') return { rate: `${spring.rate_Nmm_rad} N*mm/rad`, preload: `${spring.preload_Nmm} N*mm` }
  return { rate: `${spring.rate_N_mm} N/mm`, initial: undefined }
}

/** Every spring gives half of its force, at every posture. */
export function returnSpringAtHalf({ desk, evaluation }: TrialGround): Tried {
  const { springs } = evaluation.design
  if (springs.length === 0) return { cannot: 'the design has no spring' }
  const changes = springs.flatMap((spring) => changesOf(spring, desk))
  const says =
    `${springs.length === 1 ? 'The spring gives' : 'All springs give'} half of what ${springs.length === 1 ? 'it' : 'they'} gave: rate and preload are halved` +
    `${springs.some(({ wire }) => wire) ? ', and the wire, which would contradict them, is taken out. ' : '. '}` +
    'A trial of what is in reserve, not of a fault that was measured; one of two springs broken is such a case.'
  return { says, changes }
}

function changesOf(spring: Spring, desk: Desk): readonly Change[] {
  const at = (key: string) => ['springs', spring.id, key]
  const halves = Object.entries(strengthsOf(spring)).flatMap(([key, found]): readonly Change[] => {
    const typed = typedIn(desk, at(key)) ?? found
    return typed === undefined ? [] : [{ kind: 'set', place: at(key), value: halved(typed) }]
  })
  return spring.wire ? [...halves, { kind: 'remove', place: at('wire') }] : halves
}
