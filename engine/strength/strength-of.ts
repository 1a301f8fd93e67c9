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
  /** What gives way, in words, e.g. `pin dip in bending`. */
  readonly words: string
  /** What it is looked at on; a part at a pin is named by the finding. */
  readonly of: { readonly kind: 'pin' | 'part' | 'stop' | 'spring' | 'screw'; readonly index: number }
  readonly strength: Strength
  /** It is known even where no equilibrium was found under some load case. */
  readonly standsAlone?: true
  /** Id of the load case under which it is worst, where no state of the parts tells. */
  readonly loadCase?: string
}

/**
 * All checks. A further one is a line here, a row of the catalogue and a row of the workings.
 *
 * @param stops of each stop the largest force that it takes, N, or why there is none
 */
export function strengthOf(bench: StrengthBench, stops: readonly (number | Strength)[]): readonly NamedStrength[] {
  return [...checksOfPins(bench), ...checksOfLinks(bench), ...checksOfStops(bench, stops)]
}

function checksOfPins(bench: StrengthBench): readonly NamedStrength[] {
  return bench.mechanism.design.pins.flatMap(({ id }, index): NamedStrength[] => {
    const of = { kind: 'pin', index } as const
    const { shear, bending } = pinStrength(bench, index)
    const { bearing, tearOut, section } = lugStrength(bench, index)
    return [
      { name: `pin.${id}.shear`, words: `pin ${id} in shear`, of, strength: shear },
      { name: `pin.${id}.bending`, words: `pin ${id} in bending`, of, strength: bending },
      { name: `pin.${id}.bearing`, words: `a hole at pin ${id} under its pressure`, of, strength: bearing },
      { name: `pin.${id}.tearOut`, words: `a lug torn out at pin ${id}`, of, strength: tearOut },
      { name: `pin.${id}.section`, words: `a section beside pin ${id}`, of, strength: section },
    ]
  })
}

function checksOfLinks(bench: StrengthBench): readonly NamedStrength[] {
  return bench.mechanism.design.parts.flatMap(({ id, role }, index): NamedStrength[] => {
    if (role !== 'link') return []
    const of = { kind: 'part', index } as const
    const { tension, buckling } = linkStrength(bench, index)
    return [
      { name: `link.${id}.tension`, words: `link ${id} in tension`, of, strength: tension },
      { name: `link.${id}.buckling`, words: `link ${id} by buckling`, of, strength: buckling },
    ]
  })
}

function checksOfStops(bench: StrengthBench, stops: readonly (number | Strength)[]): readonly NamedStrength[] {
  return bench.mechanism.design.stops.map((stop, index): NamedStrength => {
    const force = stops[index]
    const strength = typeof force === 'number' ? stopStrength(bench, { stop, force_N: force }) : force
    return { name: `stop.${stop.id}.contact`, words: `stop ${stop.id} by a dent`, of: { kind: 'stop', index }, strength }
  })
}
