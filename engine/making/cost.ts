/**
 * What a batch of sets costs.
 *
 *     cost(n) = Σ orders (set-up + pieces × (each + blank)) + Σ bought, screws (pieces × each) + wage × hours(n)
 *     hours of work by hand: the minutes of the k-th finger are t₁ kᵇ, b = log₂(share left at each doubling)
 *
 * SOURCE paper: Wright, Factors affecting the cost of airplanes, J. Aeronautical Sciences 3 (1936), from memory; here every finger is summed
 * by itself, while the paper speaks of the average. Fingers that cannot be sold are made all the same: what they cost stands as a source of its own.
 */
import type { Design, Making, Order } from '../design/design.ts'
import { springsSideBySide } from './spring-mass.ts'

/** One source of cost of a batch, in the document's currency. */
export interface CostSource {
  readonly id: string
  readonly words: string
  /** Of the whole batch. */
  readonly amount: number
}

/** What a batch costs, and where it comes from. */
export interface BatchCost {
  readonly sets_count: number
  readonly fingers_count: number
  /** With those that cannot be sold. */
  readonly made_count: number
  readonly total: number
  readonly perSet: number
  /** They sum to `total`; the last is what the fingers cost that cannot be sold. */
  readonly sources: readonly CostSource[]
}

/**
 * Cost of a batch of sets.
 *
 * @param sets_count at least 1
 */
export function batchCost(design: Design, making: Making, sets_count: number): BatchCost {
  const fingers_count = sets_count * making.set_count
  const made_count = Math.ceil(fingers_count / making.good_ratio - ROUNDING)
  const good = sourcesOf(design, making, fingers_count)
  const lost = sum(sourcesOf(design, making, made_count)) - sum(good)
  const scrap = { id: 'scrap', words: `${made_count - fingers_count} fingers that cannot be sold`, amount: lost }
  const sources = [...good, scrap]
  const total = sum(sources)
  return { sets_count, fingers_count, made_count, total, perSet: total / sets_count, sources }
}

/** 20 / 0.95 is 21.05…, but 19 / 0.95 may come out a little above 20. */
const ROUNDING = 1e-9

const sum = (sources: readonly CostSource[]): number => sources.reduce((total, { amount }) => total + amount, 0)

function sourcesOf({ orders, bought, springs, screws = [] }: Design, making: Making, fingers: number): readonly CostSource[] {
  const hours = hoursOfWork(making, fingers)
  return [
    ...orders.flatMap((order) => ofOrder(order, fingers * piecesOf(order, springs))),
    ...screws.map(({ id, thread, screws_count, each = 0 }) => {
      return { id: `screws.${id}`, words: `screws ${thread.name}, ${id}`, amount: fingers * screws_count * each }
    }),
    ...bought.map(({ id, title, quantity, each }) => ({ id: `bought.${id}`, words: title, amount: fingers * quantity * each })),
    { id: 'making.assembly', words: 'assembly', amount: making.wage * hours.assembly },
    { id: 'making.fitting', words: 'fitting by hand', amount: making.wage * hours.fitting },
    { id: 'making.inspection', words: 'inspection', amount: making.wage * hours.inspection },
  ]
}

/** Pieces of an order that go into one finger. */
export function piecesOf({ parts, pins, springs }: Order, all: Design['springs']): number {
  return springs.reduce((count, spring) => count + springsSideBySide(all[spring]), parts.length + pins.length)
}

function ofOrder({ id, process, setUp, each, blank }: Order, pieces: number): readonly CostSource[] {
  return [
    { id: `orders.${id}.setUp`, words: `${id}: set-up, ${process}`, amount: setUp },
    { id: `orders.${id}.each`, words: `${id}: pieces, ${process}`, amount: pieces * each },
    { id: `orders.${id}.blank`, words: `${id}: material`, amount: pieces * blank },
  ].filter(({ amount }) => amount > 0)
}

/** Hours of a batch from its first finger on, by kind of work. */
export function hoursOfWork(making: Making, fingers_count: number): Record<'assembly' | 'fitting' | 'inspection', number> {
  const firsts = learnedSum(making.learning_ratio, fingers_count) / MINUTES_OF_HOUR
  return {
    assembly: making.assembly_min * firsts,
    fitting: making.fitting_min * firsts,
    inspection: making.inspection_min * firsts,
  }
}

const MINUTES_OF_HOUR = 60

/** What n pieces take, counted in times of the first: Σ kᵇ. */
export function learnedSum(learning_ratio: number, count: number): number {
  const exponent = Math.log2(learning_ratio)
  let total = 0
  for (let piece = 1; piece <= count; piece++) total += piece ** exponent
  return total
}
