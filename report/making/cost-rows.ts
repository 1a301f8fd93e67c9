/** What batches of several sizes cost, as rows: one a size, and one a source of cost with a column a size. */
import { type BatchCost, type BreakEven, batchCost, breakEven, type Design, unpriced } from '../../engine/index.ts'
import { moneyText } from './money-text.ts'

/** Sets in a batch, unless somebody asks for others: a first one, a small batch, a year, a product. */
export const USUAL_BATCHES: readonly number[] = [1, 10, 50, 200]

export interface BatchRow {
  readonly sets: number
  readonly made: number
  readonly perSet: string
  /** To be paid before the first set is sold. */
  readonly total: string
}

export interface SourceRow {
  readonly id: string
  readonly words: string
  /** Of one set, a column for each batch. */
  readonly perSet: readonly string[]
}

export interface CostTable {
  readonly currency: string
  readonly batches: readonly BatchRow[]
  /** Which batch pays for itself, in words; absent where no price is stated. */
  readonly pays?: string
  /** Dearest first, by the largest batch. */
  readonly sources: readonly SourceRow[]
  /** What goes into a finger without a price, in words; absent where all is priced. */
  readonly lacks?: string
}

/** Costs of batches of these numbers of sets; none where the document says nothing of making. */
export function costTable(design: Design, sets: readonly number[] = USUAL_BATCHES): CostTable | undefined {
  const { making } = design
  if (making === undefined) return undefined
  const costs = sets.map((count) => batchCost(design, making, count))
  const found = breakEven(design, making)
  const pays = found && { pays: paysWords(found) }
  const places = unpriced(design)
  const lacks = places.length > 0 && { lacks: `Not in it, for the design states no price: ${places.join(', ')}.` }
  return { currency: making.currency, batches: costs.map(batchRow), ...pays, sources: sourceRows(costs), ...lacks }
}

function paysWords({ sets_count, tried_count, price }: BreakEven): string {
  const sold = `sold for ${moneyText(price)}`
  if (sets_count === undefined) return `no batch of up to ${tried_count} sets, ${sold}`
  return sets_count === 1 ? `a single set, ${sold}` : `a batch of ${sets_count} sets, ${sold}`
}

function batchRow({ sets_count, made_count, perSet, total }: BatchCost): BatchRow {
  return { sets: sets_count, made: made_count, perSet: moneyText(perSet), total: moneyText(total) }
}

function sourceRows(costs: readonly BatchCost[]): readonly SourceRow[] {
  const amounts = new Map<string, { readonly words: string; readonly each: number[] }>()
  for (const [column, { sources, sets_count }] of costs.entries()) {
    for (const { id, words, amount } of sources) {
      const known = amounts.get(id) ?? { words: id === 'scrap' ? 'fingers that cannot be sold' : words, each: costs.map(() => 0) }
      known.each[column] = amount / sets_count
      amounts.set(id, known)
    }
  }
  return [...amounts]
    .filter(([, { each }]) => each.some((amount) => amount > 0))
    .toSorted(([, one], [, other]) => (other.each.at(-1) ?? 0) - (one.each.at(-1) ?? 0))
    .map(([id, { words, each }]) => ({ id, words, perSet: each.map(moneyText) }))
}
