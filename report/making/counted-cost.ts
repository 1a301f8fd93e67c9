/** What a set costs with the scrap that Spread counted, beside that which the design states. */
import { type BatchCost, batchCost, type CountedShare, type Design, type DesignSpread } from '../../engine/index.ts'
import { intervalText, shareText } from '../tables/spread-rows.ts'
import { USUAL_BATCHES } from './cost-rows.ts'
import { moneyText } from './money-text.ts'

/** Costs of batches where every finger that falls short is scrap. */
export interface CountedCost {
  /** Share of the fingers that meet every requirement. */
  readonly met: CountedShare
  readonly samples_count: number
  /** None where no finger that was counted meets them all. */
  readonly batches: readonly BatchCost[]
}

/** @returns undefined where the design states no prices */
export function countedCost(
  design: Design,
  { spread, asked }: DesignSpread,
  sets: readonly number[] = USUAL_BATCHES,
): CountedCost | undefined {
  const { making } = design
  if (making === undefined) return undefined
  const { met } = spread.yields.all
  const scrapped = { ...making, good_ratio: met.value }
  const batches = met.value > 0 ? sets.map((count) => batchCost(design, scrapped, count)) : []
  return { met, samples_count: asked.samples, batches }
}

/** A row of the cost table: its words, and what a set costs in each batch. */
export function countedCostRow({ met, samples_count, batches }: CountedCost): {
  readonly words: string
  readonly cells: readonly string[]
} {
  const counted = `${shareText(met.value, met)} of ${samples_count} that were counted meet every requirement (${intervalText(met)})`
  const words =
    batches.length === 0
      ? `No batch can be sold: ${counted}`
      : `A set costs where what falls short in Spread is scrap: ${counted}`
  return { words, cells: batches.map(({ perSet }) => moneyText(perSet)) }
}

/** The same as one sentence: `… is scrap: 96.5 % … (…): 1335 in a batch of 1; 761 in a batch of 10.` */
export function countedCostSentence(cost: CountedCost): string {
  const { words, cells } = countedCostRow(cost)
  const costs = cells.map((cell, index) => `${cell} in a batch of ${cost.batches[index].sets_count}`)
  return `${[words, ...(costs.length === 0 ? [] : [costs.join('; ')])].join(': ')}.`
}
