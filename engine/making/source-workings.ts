/** Workings of what a batch is paid for: orders, bought items, work by hand. */
import { hoursOfWork, learnedSum, piecesOf } from './cost.ts'
import {
  amountsOf,
  type Bench,
  batchesOf,
  type CostWorking,
  fingersOfSet,
  fingersToSell,
  OUR_SUM,
  type WorkingEntry,
} from './cost-working.ts'

/** Set-up, pieces and material of every order. */
export function orderWorkings(bench: Bench): readonly WorkingEntry[] {
  return bench.design.orders.flatMap((order) => {
    const pieces = piecesOf(order, bench.design.springs)
    const place = `orders.${order.id}`
    return [
      [`${place}.setUp`, setUpWorking(bench, `${place}.setUp`, order.setUp)] as const,
      ...(['each', 'blank'] as const).map((key) => {
        const id = `${place}.${key}`
        return [id, piecesWorking(bench, id, { pieces, price: order[key], place: id })] as const
      }),
    ]
  })
}

function setUpWorking(bench: Bench, place: string, price: number): CostWorking {
  return {
    method: 'Paid once for a batch, whatever its size; the sets of the batch share it.',
    formula: String.raw`\frac{S}{m}`,
    inputs: [{ name: 'set-up, S', sort: 'money', value: price, place }],
    batches: batchesOf(bench),
    steps: [{ name: 'sets, m', sort: 'count', values: batchesOf(bench) }, ...amountsOf(bench, place)],
    source: OUR_SUM,
  }
}

/** Pieces of a finger with their price, and where in the document both stand; `counted` is absent where the list of an order is counted. */
interface Priced {
  readonly pieces: number
  readonly counted?: string
  readonly price: number
  readonly place: string
}

/** Pieces at a price. @param id of the source */
export function piecesWorking(bench: Bench, id: string, { pieces, counted, price, place }: Priced): CostWorking {
  const perFinger = counted === undefined ? {} : { place: counted }
  return {
    method: 'Paid for every piece of every finger that is to be sold.',
    formula: String.raw`\frac{n\,p\,c}{m}`,
    inputs: [
      fingersOfSet(bench),
      { name: 'pieces in a finger, p', sort: 'count', value: pieces, ...perFinger },
      { name: 'price of one, c', sort: 'money', value: price, place },
    ],
    batches: batchesOf(bench),
    steps: [
      fingersToSell(bench),
      { name: 'pieces, n p', sort: 'count', values: bench.costs.map((cost) => cost.fingers_count * pieces) },
      ...amountsOf(bench, id),
    ],
    source: OUR_SUM,
  }
}

/** A kind of work by hand, with its learning. */
export function workWorking(bench: Bench, work: 'assembly' | 'fitting' | 'inspection'): CostWorking {
  const { making, costs } = bench
  return {
    method:
      'Work by hand: the minutes of the k-th finger fall to the stated share each time the number made has doubled; every finger is summed by itself.',
    formula: String.raw`\frac{w}{m}\,\frac{t_1}{60}\sum_{k=1}^{n}k^{\log_2 L}`,
    inputs: [
      fingersOfSet(bench),
      { name: 'an hour, w', sort: 'money', value: making.wage, place: 'making.wage' },
      { name: 'first finger, t₁', sort: 'minutes', value: making[`${work}_min`], place: `making.${work}` },
      { name: 'left at each doubling, L', sort: 'share', value: making.learning_ratio, place: 'making.learning' },
    ],
    batches: batchesOf(bench),
    steps: [
      fingersToSell(bench),
      {
        name: 'in times of the first',
        sort: 'number',
        values: costs.map((cost) => learnedSum(making.learning_ratio, cost.fingers_count)),
      },
      { name: 'hours', sort: 'hours', values: costs.map((cost) => hoursOfWork(making, cost.fingers_count)[work]) },
      ...amountsOf(bench, `making.${work}`),
    ],
    source:
      'Wright, J. Aeronautical Sciences 3 (1936), from memory; here each finger is summed, while the paper speaks of the average',
  }
}
