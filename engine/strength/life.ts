import { closingsOver } from '../design/closings.ts'
import type { Design, Material } from '../design/design.ts'
import { type Cycled, lifeLine, strengthAfter } from './endurance.ts'
import type { Borne } from './fatigue.ts'

/**
 * What a material bears for all closings that the document states, or what is missing. Each closing is taken as one cycle of the load case
 * that is judged, whatever its share of the closings: the safe side.
 */
export function life({ use }: Design, material: Material, cycled: Cycled): Borne | { readonly missing: string } {
  const line = lifeLine(material, cycled)
  if ('missing' in line) return line
  if (!use) return { missing: 'the document does not say how often the finger is closed (use)' }
  const strength_MPa = strengthAfter(line, closingsOver(use))
  if (strength_MPa === undefined) {
    const known = `the fatigue strength of ${material.name} is known for ${line.long_cycles} cycles`
    return { missing: `${known}, and the stated life has more closings` }
  }
  return { strength_MPa, ultimate_MPa: line.ultimate_MPa }
}
