/** What the working of a number of a cost table is made of: a formula, what goes in from where in the document, steps for each batch. */
import type { Design, Making } from '../design/design.ts'
import type { BatchCost } from './cost.ts'

/** What a number counts. */
export type CostSort = 'money' | 'count' | 'number' | 'minutes' | 'hours' | 'share'

/** One value that goes in. */
export interface CostInput {
  readonly name: string
  readonly sort: CostSort
  readonly value: number
  /** Where it stands in the document; absent for what is counted from it. */
  readonly place?: string
}

/** One step, with a value for each batch. */
export interface CostStep {
  readonly name: string
  readonly sort: CostSort
  readonly values: readonly number[]
}

export interface CostWorking {
  readonly method: string
  /** TeX. */
  readonly formula: string
  readonly inputs: readonly CostInput[]
  /** Sets in each batch that the steps are of. */
  readonly batches: readonly number[]
  /** The last is the number itself. */
  readonly steps: readonly CostStep[]
  readonly source: string
}

/** Source of a working that adds prices up. */
export const OUR_SUM = 'a sum of prices that the document states'

/** A working under the id of what it is of. */
export type WorkingEntry = readonly [string, CostWorking]

/** What workings are made from: the costs of each batch that is shown. */
export interface Bench {
  readonly design: Design
  readonly making: Making
  readonly costs: readonly BatchCost[]
}

/** Sets in each batch. */
export const batchesOf = ({ costs }: Bench): readonly number[] => costs.map(({ sets_count }) => sets_count)
/** Fingers that are sold of each batch. */
export const fingersToSell = ({ costs }: Bench): CostStep => ({
  name: 'fingers to sell, n',
  sort: 'count',
  values: costs.map((cost) => cost.fingers_count),
})
/** Fingers in one set. */
export const fingersOfSet = ({ making }: Bench): CostInput => ({
  name: 'fingers in a set',
  sort: 'count',
  value: making.set_count,
  place: 'making.set',
})

/** Of a source: what the batch pays for it, and what that is of one set. */
export function amountsOf({ costs }: Bench, id: string): readonly CostStep[] {
  const all = costs.map(({ sources }) => sources.find((one) => one.id === id)?.amount ?? 0)
  return [
    { name: 'of the batch', sort: 'money', values: all },
    { name: 'of one set', sort: 'money', values: all.map((amount, index) => amount / costs[index].sets_count) },
  ]
}
