import type { Design } from '../design/design.ts'
import { type Item, partsList } from './parts-list.ts'

/** An item of which one finger has more or fewer than before; 0 where it is not there. */
export interface CountMove {
  readonly title: string
  readonly before_count: number
  readonly after_count: number
}

/** What one finger is put together from, before and after. */
export interface CountsMoved {
  /** Pieces of one finger. */
  readonly before_count: number
  readonly after_count: number
  /** Of what could be weighed on either side. */
  readonly before_kg: number
  readonly after_kg: number
  /** Whether all items of both could be weighed. */
  readonly isAllWeighed: boolean
  /** In the order of the list after, then what is gone. */
  readonly moves: readonly CountMove[]
}

/** Compares the parts lists of two designs; an item is the same where its kind and its id are. */
export function countsMoved(before: Design, after: Design): CountsMoved {
  const [was, is] = [partsList(before), partsList(after)]
  const [old, now] = [was, is].map(({ items }) => new Map(items.map((item) => [`${item.kind} ${item.id}`, item])))
  const keys = [...new Set([...now.keys(), ...old.keys()])]
  const moves = keys.flatMap((key) => {
    const counts = { before_count: old.get(key)?.perFinger_count ?? 0, after_count: now.get(key)?.perFinger_count ?? 0 }
    const title = (now.get(key) ?? old.get(key))?.title ?? key
    return counts.before_count === counts.after_count ? [] : [{ title, ...counts }]
  })
  return {
    before_count: piecesOf(was.items),
    after_count: piecesOf(is.items),
    before_kg: was.mass_kg,
    after_kg: is.mass_kg,
    isAllWeighed: was.unweighed.length + is.unweighed.length === 0,
    moves,
  }
}

const piecesOf = (items: readonly Item[]): number => items.reduce((sum, { perFinger_count }) => sum + perFinger_count, 0)
