import type { Design } from '../design/design.ts'
import { type BatchCost, batchCost } from './cost.ts'

/** What one set costs from one source, before and after; 0 where it is not there. */
export interface SourceMove {
  readonly id: string
  readonly words: string
  readonly before: number
  readonly after: number
}

/** What one set costs in a batch of so many, before and after. */
export interface BatchMove {
  readonly sets_count: number
  readonly before: number
  readonly after: number
  /** Sources of which a set costs more or less, the largest change first; they sum to the change of the whole. */
  readonly moves: readonly SourceMove[]
}

/** Costs of two designs side by side, or why they cannot be: one of them states no prices, or in another currency. */
export type CostMoved =
  | {
      readonly kind: 'compared'
      readonly currency: string
      /** Fingers in a set. */
      readonly before_count: number
      readonly after_count: number
      readonly batches: readonly BatchMove[]
    }
  | { readonly kind: 'unpriced'; readonly which: 'both' | 'before' | 'after' }
  | { readonly kind: 'other currency'; readonly before: string; readonly after: string }

/**
 * Compares what a set costs.
 *
 * @param batches numbers of sets, each at least 1
 */
export function costMoved(before: Design, after: Design, batches: readonly number[]): CostMoved {
  const [was, is] = [before.making, after.making]
  if (was === undefined || is === undefined) {
    return { kind: 'unpriced', which: is !== undefined ? 'before' : was !== undefined ? 'after' : 'both' }
  }
  if (was.currency !== is.currency) return { kind: 'other currency', before: was.currency, after: is.currency }
  return {
    kind: 'compared',
    currency: is.currency,
    before_count: was.set_count,
    after_count: is.set_count,
    batches: batches.map((sets) => batchMove(batchCost(before, was, sets), batchCost(after, is, sets))),
  }
}

/** Sums of the same prices differ by their rounding. */
const SAME = 1e-9

function batchMove(before: BatchCost, after: BatchCost): BatchMove {
  const { sets_count } = after
  const [old, now] = [before, after].map(({ sources }) => new Map(sources.map((source) => [source.id, source])))
  const ids = [...new Set([...now.keys(), ...old.keys()])]
  const moves = ids.flatMap((id): readonly SourceMove[] => {
    const [was, is] = [old.get(id), now.get(id)].map((source) => (source?.amount ?? 0) / sets_count)
    const words = id === 'scrap' ? 'fingers that cannot be sold' : (now.get(id) ?? old.get(id))?.words
    return Math.abs(is - was) < SAME ? [] : [{ id, words: words ?? id, before: was, after: is }]
  })
  const change = ({ before: was, after: is }: SourceMove): number => Math.abs(is - was)
  return {
    sets_count,
    before: before.perSet,
    after: after.perSet,
    moves: moves.toSorted((one, other) => change(other) - change(one)),
  }
}
