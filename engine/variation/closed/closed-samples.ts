/** Closed postures of many sets: each by the short way where it serves, by the long way where it does not, and which is said. */

import { valuesOfShares } from '../sources/law.ts'
import type { Variation } from '../sources/source.ts'
import { type CloudAsked, sharesOf } from '../spread/cloud.ts'
import type { Column } from './columns.ts'
import { block_sets, type HoldBlock, type HoldFingers } from './hold-finger.ts'
import { holdPlainly } from './hold-plainly.ts'

/** Closed numbers of a range of samples; plain arrays, so that a worker can hand them over. */
export interface ClosedSamples {
  readonly from: number
  /** The first number that is not in it. */
  readonly to: number
  /** Sample by sample, as `HoldNumbers`; NaN where a set does not close as the design does. */
  readonly numbers: Float64Array
  /** Sets that the long way had to say. */
  readonly plainly_count: number
}

/** Which samples of which sets. */
export interface ClosedAsked {
  readonly variation: Variation
  readonly fingers: HoldFingers
  /** Over the sources of the sets; those of wearers stay as stated. */
  readonly cloud: Omit<CloudAsked, 'directions'>
  readonly from: number
  readonly to: number
}

/** Works out a range of samples. The same range gives the same bytes wherever and whenever it is made. */
export function closedSamples({ variation, fingers, cloud, from, to }: ClosedAsked): ClosedSamples {
  const { sources } = variation
  const { numbers_count } = fingers
  const draw = drawSets(variation, cloud)
  const block: HoldBlock = {
    values: sources.map(({ nominal }) => new Float64Array(block_sets).fill(nominal)),
    numbers: Array.from({ length: numbers_count }, () => new Float64Array(block_sets)),
    isLong: new Uint8Array(block_sets),
  }
  const numbers = new Float64Array((to - from) * numbers_count)
  const out = new Float64Array(numbers_count)
  let plainly_count = 0
  for (let begin = from; begin < to; begin += block_sets) {
    draw(begin, block.values)
    fingers.solveBlock(block)
    for (let set = 0; set < Math.min(block_sets, to - begin); set++) {
      for (let index = 0; index < numbers_count; index++) out[index] = block.numbers[index][set]
      if (block.isLong[set] !== 0) {
        plainly_count++
        holdPlainly(
          variation,
          block.values.map((column) => column[set]),
          out,
        )
      }
      numbers.set(out, (begin + set - from) * numbers_count)
    }
  }
  return { from, to, numbers, plainly_count }
}

/** Draws blocks of sets from the cloud. @returns writes the values of those from a number on; sources that are not of sets stay as they stand */
function drawSets({ sources }: Variation, cloud: ClosedAsked['cloud']): (begin: number, values: readonly Column[]) => void {
  const varying = sources.flatMap(({ of }, place) => (of === 'sets' ? [place] : []))
  const toValues = valuesOfShares(varying.map((place) => sources[place]))
  const shares = sharesOf(cloud)
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
