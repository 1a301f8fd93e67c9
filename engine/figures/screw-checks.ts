/** Screws under their preload and the load on the mount, under the names of their figures. */
import type { Factors } from '../strength/factors.ts'
import { type LoadedPosture, mountPulls } from '../strength/mount-pull.ts'
import type { NamedStrength } from '../strength/named-strength.ts'
import { screwStrength } from '../strength/screw-strength.ts'
import type { Survey } from './survey.ts'

/** Checks of the screws. What touches the pads decides them, whether or not an equilibrium was found. */
export function screwChecks(survey: Survey, factors: Factors): readonly NamedStrength[] {
  const { design, path } = survey
  const { screws = [], parts } = design
  const holding = screws.filter(({ holdsMount }) => holdsMount)
  const pulls = holding.length === 0 ? [] : mountPulls(path.mechanism, holding, loadedPostures(survey))
  return screws.flatMap((screw, index): readonly NamedStrength[] => {
    const found = screw.holdsMount && pulls[holding.indexOf(screw)]
    const pull = typeof found === 'object' ? found.pull_N : found
    const { proof, stripping, separation } = screwStrength(screw, parts[screw.part], { factors, pull })
    const at = typeof found === 'object' ? found.at : undefined
    const common = { of: { kind: 'screw', index }, standsAlone: true, ...(at && { loadCase: at.loadCase.id }) } as const
    const named = (name: string, words: string, strength: NamedStrength['strength']): NamedStrength => ({
      name: `screw.${screw.id}.${name}`,
      words: `screw ${screw.id} ${words}`,
      strength,
      ...common,
    })
    return [
      named('proof', 'by stretching', proof),
      named('stripping', 'by its thread', stripping),
      ...(separation ? [named('separation', 'by letting its joint open', separation)] : []),
    ]
  })
}

function loadedPostures({ cases, nodes, drive }: Survey): readonly LoadedPosture[] {
  return cases.flatMap(({ loadCase }) => {
    const first = loadCase.acts === 'travel' ? 0 : nodes.length - 1
    return nodes.slice(first).map(({ posture }, index) => ({ loadCase, drive: drive[first + index], posture }))
  })
}
