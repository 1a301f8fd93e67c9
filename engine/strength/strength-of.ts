/** Every check of a finger, in the order of its pins, links and stops. */
import { once } from '../numbers/once.ts'
import { linkStrength } from './link-strength.ts'
import { lugFatigue } from './lug-fatigue.ts'
import { lugStrength } from './lug-strength.ts'
import { checkOf, type NamedStrength } from './named-strength.ts'
import { partBending } from './part-bending.ts'
import { pinFatigue } from './pin-fatigue.ts'
import { pinStrength } from './pin-strength.ts'
import type { Leant } from './side-moment.ts'
import { sideStrength } from './side-strength.ts'
import { stopStrength } from './stop-strength.ts'
import type { Strength } from './strength.ts'
import type { StrengthBench } from './strength-bench.ts'

/**
 * All checks, each worked out when it is looked at. A further one is a line here, a row of the catalogue and a row of the workings.
 *
 * @param asked what the pins' forces do not say
 */
export function strengthOf(bench: StrengthBench, asked: StrengthAsked): readonly NamedStrength[] {
  return [
    ...checksOfPins(bench),
    ...checksOfLinks(bench),
    ...checksOfParts(bench),
    ...checksOfStops(bench, asked.stops),
    ...sideStrength(bench, asked.leant),
  ]
}

/** What the checks ask for beside the states in which pins are pressed. */
export interface StrengthAsked {
  /** Of each stop the largest force that it takes, N, or why there is none. */
  readonly stops: readonly (number | Strength)[]
  /** The postures in which the finger is leant on from the side. */
  readonly leant: readonly Leant[]
}

function checksOfPins(bench: StrengthBench): readonly NamedStrength[] {
  return bench.mechanism.design.pins.flatMap(({ id }, index): NamedStrength[] => {
    const of = { kind: 'pin', index } as const
    const pin = once(() => pinStrength(bench, index))
    const lug = once(() => lugStrength(bench, index))
    return [
      checkOf({ name: `pin.${id}.shear`, words: `pin ${id} in shear`, of }, () => pin().shear),
      checkOf({ name: `pin.${id}.bending`, words: `pin ${id} in bending`, of }, () => pin().bending),
      checkOf({ name: `pin.${id}.bearing`, words: `a hole at pin ${id} under its pressure`, of }, () => lug().bearing),
      checkOf({ name: `pin.${id}.tearOut`, words: `a lug torn out at pin ${id}`, of }, () => lug().tearOut),
      checkOf({ name: `pin.${id}.section`, words: `a section beside pin ${id}`, of }, () => lug().section),
      checkOf({ name: `pin.${id}.fatigue`, words: `pin ${id} over its life`, of }, () => pinFatigue(bench, index)),
      checkOf({ name: `pin.${id}.lugFatigue`, words: `a lug at pin ${id} over its life`, of }, () => lugFatigue(bench, index)),
    ]
  })
}

function checksOfLinks(bench: StrengthBench): readonly NamedStrength[] {
  return bench.mechanism.design.parts.flatMap(({ id, role }, index): NamedStrength[] => {
    if (role !== 'link') return []
    const of = { kind: 'part', index } as const
    const link = once(() => linkStrength(bench, index))
    return [
      checkOf({ name: `link.${id}.tension`, words: `link ${id} in tension`, of }, () => link().tension),
      checkOf({ name: `link.${id}.buckling`, words: `link ${id} by buckling`, of }, () => link().buckling),
    ]
  })
}

function checksOfParts(bench: StrengthBench): readonly NamedStrength[] {
  return bench.mechanism.design.parts.flatMap(({ id }, index): NamedStrength[] => {
    if (index === 0) return []
    const of = { kind: 'part', index } as const
    return [checkOf({ name: `part.${id}.bending`, words: `part ${id} in bending`, of }, () => partBending(bench, index))]
  })
}

function checksOfStops(bench: StrengthBench, stops: readonly (number | Strength)[]): readonly NamedStrength[] {
  return bench.mechanism.design.stops.map((stop, index): NamedStrength => {
    const of = { kind: 'stop', index } as const
    const named = { name: `stop.${stop.id}.contact`, words: `stop ${stop.id}`, of, standsAlone: true } as const
    const force = stops[index]
    return checkOf(named, () => (typeof force === 'number' ? stopStrength(bench, { stop, force_N: force }) : force))
  })
}
