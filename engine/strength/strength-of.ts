/** Every check of a finger, in the order of its pins, links and stops. */
import { linkStrength } from './link-strength.ts'
import { lugStrength } from './lug-strength.ts'
import { pinStrength } from './pin-strength.ts'
import { stopStrength } from './stop-strength.ts'
import type { Strength } from './strength.ts'
import type { StrengthBench } from './strength-bench.ts'

/** A check under the name of its figure. */
export interface NamedStrength {
  /** E.g. `pin.dip.shear`. */
  readonly name: string
  /** What it is about, in words, e.g. `pin dip in shear`. */
  readonly words: string
  readonly strength: Strength
}

/**
 * All checks.
 *
 * @param stops of each stop the largest force that it takes, N, or why there is none
 */
export function strengthOf(bench: StrengthBench, stops: readonly (number | Strength)[]): readonly NamedStrength[] {
  const { pins, parts, stops: declared } = bench.mechanism.design
  const ofPins = pins.flatMap(({ id }, pin): NamedStrength[] => {
    const { shear, bending } = pinStrength(bench, pin)
    const { bearing, tearOut, section } = lugStrength(bench, pin)
    return [
      { name: `pin.${id}.shear`, words: `pin ${id} in shear`, strength: shear },
      { name: `pin.${id}.bending`, words: `pin ${id} in bending`, strength: bending },
      { name: `pin.${id}.bearing`, words: `a hole at pin ${id} under its pressure`, strength: bearing },
      { name: `pin.${id}.tearOut`, words: `a lug torn out at pin ${id}`, strength: tearOut },
      { name: `pin.${id}.section`, words: `a section beside pin ${id}`, strength: section },
    ]
  })
  const ofLinks = parts.flatMap(({ id, role }, part): NamedStrength[] => {
    if (role !== 'link') return []
    const { tension, buckling } = linkStrength(bench, part)
    return [
      { name: `link.${id}.tension`, words: `link ${id} in tension`, strength: tension },
      { name: `link.${id}.buckling`, words: `link ${id} by buckling`, strength: buckling },
    ]
  })
  const ofStops = declared.map((stop, index): NamedStrength => {
    const force = stops[index]
    const strength = typeof force === 'number' ? stopStrength(bench, { stop, force_N: force }) : force
    return { name: `stop.${stop.id}.contact`, words: `stop ${stop.id} by a dent`, strength }
  })
  return [...ofPins, ...ofLinks, ...ofStops]
}
