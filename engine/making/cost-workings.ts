import type { Design, Making } from '../design/design.ts'
import { madeWorking, paysWorking, perSetWorking, scrapWorking, totalWorking } from './batch-workings.ts'
import { breakEven } from './break-even.ts'
import { batchCost } from './cost.ts'
import type { CostWorking, WorkingEntry } from './cost-working.ts'
import { orderWorkings, piecesWorking, workWorking } from './source-workings.ts'

/**
 * Workings by what they are of: the ids of the sources of a batch, `scrap`, and `perSet`, `total`, `made`; `pays` where a price is stated.
 *
 * @param batches numbers of sets, each at least 1
 */
export function costWorkings(design: Design, making: Making, batches: readonly number[]): ReadonlyMap<string, CostWorking> {
  const costs = batches.map((sets) => batchCost(design, making, sets))
  const bench = { design, making, costs }
  const pays = breakEven(design, making)
  return new Map([
    ...orderWorkings(bench),
    ...(design.screws ?? []).map(({ id, screws_count, each = 0 }): WorkingEntry => {
      const place = `screws.${id}`
      const price = { price: each, place: `${place}.each` }
      return [place, piecesWorking(bench, place, { pieces: screws_count, counted: `${place}.screws`, ...price })]
    }),
    ...design.bought.map(
      ({ id, quantity, each }): WorkingEntry => [
        `bought.${id}`,
        piecesWorking(bench, `bought.${id}`, {
          ...{ pieces: quantity, counted: `bought.${id}.quantity`, price: each, place: `bought.${id}.each` },
        }),
      ],
    ),
    ...(['assembly', 'fitting', 'inspection'] as const).map((work): WorkingEntry => [`making.${work}`, workWorking(bench, work)]),
    ['scrap', scrapWorking(bench)],
    ['made', madeWorking(bench)],
    ['total', totalWorking(bench)],
    ['perSet', perSetWorking(bench)],
    ...(pays === undefined ? [] : [['pays', paysWorking({ design, making }, pays)] as const]),
  ])
}
