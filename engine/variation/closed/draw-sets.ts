/** Sets drawn from a cloud, a block at a time. */
import { valuesOfShares } from '../sources/law.ts'
import type { Variation } from '../sources/source.ts'
import { sharesOf } from '../spread/cloud.ts'
import type { Column } from './columns.ts'
import { block_sets } from './hold-finger.ts'

/** Writes the values of the sets from a number on, a column a source; sources that are not of sets stay as they stand. */
export type DrawSets = (begin: number, values: readonly Column[]) => void

/** Draws the sets of a seed, any block at any time. Laying out its sequences takes as long as some thousand sets: it is made once. */
export function drawSets({ sources }: Variation, seed: number): DrawSets {
  const varying = sources.flatMap(({ of }, place) => (of === 'sets' ? [place] : []))
  const toValues = valuesOfShares(varying.map((place) => sources[place]))
  const shares = sharesOf({ dimensions: varying.length, seed })
  const row = new Float64Array(varying.length)
  return (begin, values) => {
    const own = varying.map((place) => values[place])
    for (let set = 0; set < block_sets; set++) {
      shares.fill(begin + set, row)
      for (let index = 0; index < own.length; index++) own[index][set] = row[index]
    }
    toValues(own)
  }
}
