/**
 * Friction: one source a pair, because a set is greased, coated and worn as a whole. Its value runs from −1 (least) over 0 (likely) to 1
 * (most), the same for rest and motion, so that half of all sets stay below what is likely. In a set friction is known: least, likely and most
 * are one value, and the set is held and let go with the same coefficient. Where nobody knows it (NaN) the range stays that was typed.
 */
import type { Design, FrictionPair } from '../../design/design.ts'
import { variationUnstated } from '../../design/read-variation-rules.ts'
import { lawOfRange } from './law-of.ts'
import type { Source } from './source.ts'
import type { Varying } from './varying.ts'

const states = ['moving', 'rest'] as const
const ends = ['least', 'likely', 'most'] as const

/** Sources of the pairs that pins and stops use and whose range is wider than nothing. */
export function frictionSources({ frictionPairs, pins, stops, variation = variationUnstated }: Design): readonly Varying[] {
  const used = new Set([...pins, ...stops].map(({ friction }) => friction.name))
  return frictionPairs
    .filter((pair) => used.has(pair.name) && hasRange(pair))
    .map((pair) => frictionVarying(pair, variation.friction))
}

const hasRange = (pair: FrictionPair): boolean => states.some((state) => pair[state].most > pair[state].least)

function frictionVarying(pair: FrictionPair, word: 'uniform' | 'normal'): Varying {
  const range = { least: -1, most: 1 }
  const source: Source = {
    id: `friction.${pair.name}`,
    words: `friction of ${pair.name}, from least (−1) to most (1)`,
    unit: '1',
    nominal: 0,
    law: lawOfRange(range, word),
    ...range,
    of: 'sets',
  }
  return {
    sources: [source],
    put: ([value], sizes) => {
      if (Number.isNaN(value)) return
      for (const state of states) {
        const coefficient = coefficientAt(pair[state], value)
        for (const end of ends) sizes.values.set(`friction.${pair.name}.${state}.${end}`, coefficient)
      }
    },
  }
}

/** The coefficient at a place of its range: −1 least, 0 likely, 1 most, straight in between. */
export function coefficientAt({ least, likely, most }: FrictionPair['moving'], value: number): number {
  const share = Math.abs(value)
  return likely * (1 - share) + (value < 0 ? least : most) * share
}
