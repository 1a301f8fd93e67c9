import type { Design, Making } from '../design/design.ts'
import { limits } from '../numbers/limits.ts'
import { batchCost } from './cost.ts'

/** What a price makes of a first batch. */
export interface BreakEven {
  readonly price: number
  /** Least number of sets in one batch whose sale brings in what the batch cost; undefined: none that was tried does. */
  readonly sets_count?: number
  /** Largest number of sets that was tried. */
  readonly tried_count: number
}

/** Searches the least batch that pays for itself; undefined where the document states no price. */
export function breakEven(design: Design, making: Making): BreakEven | undefined {
  const { price } = making
  if (price === undefined) return undefined
  const pays = (sets: number): boolean => price * sets >= batchCost(design, making, sets).total
  const tried_count = limits.setsOfBatch
  for (let sets = 1; sets <= tried_count; sets++) if (pays(sets)) return { price, sets_count: sets, tried_count }
  return { price, tried_count }
}
