/** Workings of what a batch comes to: fingers made and lost, its cost, one set, and when it pays. */
import type { BreakEven } from './break-even.ts'
import { batchCost } from './cost.ts'
import {
  amountsOf,
  type Bench,
  batchesOf,
  type CostInput,
  type CostStep,
  type CostWorking,
  fingersOfSet,
  fingersToSell,
  OUR_SUM,
} from './cost-working.ts'

const goodShare = ({ making }: Bench): CostInput => ({
  name: 'good share, g',
  sort: 'share',
  value: making.good_ratio,
  place: 'making.goodShare',
})
const made = ({ costs }: Bench): CostStep => ({
  name: 'fingers made, N',
  sort: 'count',
  values: costs.map((cost) => cost.made_count),
})

/** Fingers that have to be made. */
export function madeWorking(bench: Bench): CostWorking {
  return {
    method: 'So many have to be made that the good ones fill the sets.',
    formula: String.raw`N=\left\lceil\frac{n}{g}\right\rceil`,
    inputs: [fingersOfSet(bench), goodShare(bench)],
    batches: batchesOf(bench),
    steps: [fingersToSell(bench), made(bench)],
    source: OUR_SUM,
  }
}

/** Fingers that cannot be sold. */
export function scrapWorking(bench: Bench): CostWorking {
  const lost = amountsOf(bench, 'scrap')
  const all = { name: 'all fingers made', sort: 'money', values: bench.costs.map(({ total }) => total) } as const
  const good = {
    name: 'those that are sold alone',
    sort: 'money',
    values: all.values.map((total, index) => total - lost[0].values[index]),
  } as const
  return {
    method: 'What the fingers cost that cannot be sold: all that are made, less what those that are sold would cost alone.',
    formula: String.raw`\frac{C(N)-C(n)}{m}`,
    inputs: [goodShare(bench)],
    batches: batchesOf(bench),
    steps: [fingersToSell(bench), made(bench), all, good, ...lost],
    source: OUR_SUM,
  }
}

/** The whole batch. */
export function totalWorking(bench: Bench): CostWorking {
  const [first] = bench.costs
  const ofSources = (first?.sources ?? []).map(({ id, words }): CostStep => {
    const name = id === 'scrap' ? 'fingers that cannot be sold' : words
    return { name, sort: 'money', values: bench.costs.map(({ sources }) => sources.find((one) => one.id === id)?.amount ?? 0) }
  })
  return {
    method: 'All sources of the batch together.',
    formula: String.raw`C=\sum_i C_i`,
    inputs: [],
    batches: batchesOf(bench),
    steps: [...ofSources, { name: 'the batch', sort: 'money', values: bench.costs.map(({ total }) => total) }],
    source: OUR_SUM,
  }
}

/** One set of it. */
export function perSetWorking(bench: Bench): CostWorking {
  return {
    method: 'The batch, shared by its sets.',
    formula: String.raw`\frac{C}{m}`,
    inputs: [],
    batches: batchesOf(bench),
    steps: [
      { name: 'the batch, C', sort: 'money', values: bench.costs.map(({ total }) => total) },
      { name: 'sets, m', sort: 'count', values: batchesOf(bench) },
      { name: 'one set', sort: 'money', values: bench.costs.map(({ perSet }) => perSet) },
    ],
    source: OUR_SUM,
  }
}

/** The batch that pays for itself beside the one that is a set smaller; of none, the largest that was tried. */
export function paysWorking(
  { design, making }: Omit<Bench, 'costs'>,
  { price, sets_count, tried_count }: BreakEven,
): CostWorking {
  const last = sets_count ?? tried_count
  const batches = last > 1 ? [last - 1, last] : [last]
  return {
    method: 'Batches are tried from one set on; the first whose sale brings in what it costs pays for itself.',
    formula: String.raw`m\,P\ge C(m)`,
    inputs: [{ name: 'price of a set, P', sort: 'money', value: price, place: 'making.price' }],
    batches,
    steps: [
      { name: 'it costs, C', sort: 'money', values: batches.map((sets) => batchCost(design, making, sets).total) },
      { name: 'it brings in, m P', sort: 'money', values: batches.map((sets) => sets * price) },
    ],
    source: OUR_SUM,
  }
}
