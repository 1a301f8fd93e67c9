/** Closed postures of many sets: each by the short way where it serves, by the long way where it does not, and which is said. */

import type { Variation } from '../sources/source.ts'
import type { DrawSets } from './draw-sets.ts'
import { block_sets, type HoldBlock, type HoldFingers } from './hold-finger.ts'
import { holdPlainly } from './hold-plainly.ts'
import { leaveOut, type Untold } from './untold.ts'

/** Closed numbers of a range of samples; plain arrays, so that a worker can hand them over. */
export interface ClosedSamples {
  readonly from: number
  /** The first number that is not in it. */
  readonly to: number
  /** Sample by sample, as `HoldNumbers`; NaN where a set does not close as the design does. */
  readonly numbers: Float64Array
  /** Sets that the long way had to say. */
  readonly plainly_count: number
  /** Numbers that are NaN in every set. */
  readonly untold: readonly Untold[]
}

/** Which samples of which sets. */
export interface ClosedAsked {
  readonly variation: Variation
  readonly fingers: HoldFingers
  readonly draw: DrawSets
  readonly from: number
  readonly to: number
}

/** Works out a range of samples. The same range gives the same bytes wherever and whenever it is made. */
export function closedSamples({ variation, fingers, draw, from, to }: ClosedAsked): ClosedSamples {
  const { sources } = variation
  const { numbers_count } = fingers
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
        leaveOut(fingers.untold, out)
      }
      numbers.set(out, (begin + set - from) * numbers_count)
    }
  }
  return { from, to, numbers, plainly_count, untold: fingers.untold }
}
