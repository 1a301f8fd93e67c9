/** A finger that is leant on from the side: its hinges and its phalanges. */

import { checkOf, type NamedStrength } from './named-strength.ts'
import { sideHinge } from './side-hinge.ts'
import type { Leant } from './side-moment.ts'
import { sidePart } from './side-part.ts'
import type { StrengthBench } from './strength-bench.ts'

/** The checks of side load, under the names of their figures: of every pin, and of every part but the mount. */
export function sideStrength(bench: StrengthBench, leant: readonly Leant[]): readonly NamedStrength[] {
  const { pins, parts } = bench.mechanism.design
  const ofPins = pins.map(({ id }, pin): NamedStrength => {
    const named = {
      name: `pin.${id}.sideLoad`,
      words: `the hinge at pin ${id} from the side`,
      of: { kind: 'pin', index: pin },
    } as const
    return checkOf(named, () => sideHinge(bench, leant, pin))
  })
  const ofParts = parts.flatMap(({ id }, part): NamedStrength[] => {
    if (part === 0) return []
    const of = { kind: 'part', index: part } as const
    const named = { name: `part.${id}.sideLoad`, words: `part ${id} from the side`, of, standsAlone: true } as const
    return [checkOf(named, () => sidePart(bench, leant, part))]
  })
  return [...ofPins, ...ofParts]
}
