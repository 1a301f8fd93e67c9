/** The working of a number of the cost table as it is printed. */
import type { CostSort, CostWorking } from '../../engine/index.ts'
import { shownFigure } from '../../engine/index.ts'
import { moneyText } from './money-text.ts'

export interface WrittenCostWorking {
  readonly method: string
  /** TeX. */
  readonly formula: string
  readonly inputs: readonly { readonly name: string; readonly value: string; readonly place?: string }[]
  /** Over the columns of the steps. */
  readonly heads: readonly string[]
  readonly steps: readonly { readonly name: string; readonly cells: readonly string[] }[]
  readonly source: string
}

/** Money without its currency, counts whole, shares in per cent. */
export function writtenCostWorking({ method, formula, inputs, batches, steps, source }: CostWorking): WrittenCostWorking {
  return {
    method,
    formula,
    inputs: inputs.map(({ name, sort, value, place }) => ({
      name,
      value: written(value, sort),
      ...(place !== undefined && { place }),
    })),
    heads: batches.map((sets) => (sets === 1 ? '1 set' : `${sets} sets`)),
    steps: steps.map(({ name, sort, values }) => ({ name, cells: values.map((value) => written(value, sort)) })),
    source,
  }
}

const PERCENT = 100

function written(value: number, sort: CostSort): string {
  switch (sort) {
    case 'money':
      return moneyText(value)
    case 'count':
      return String(value)
    case 'share':
      return `${shownFigure(value * PERCENT, '1').number} %`
    case 'minutes':
      return `${shownFigure(value, '1').number} min`
    case 'hours':
      return `${shownFigure(value, '1').number} h`
    case 'number':
      return shownFigure(value, '1').number
  }
}
