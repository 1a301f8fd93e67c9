import type { Place } from '../json-places.ts'
import type { Change } from './change.ts'
import type { Leaf } from './leaves.ts'

/** Whether a leaf is the name of a thing in an order. It keeps nobody: an order for what is there no more orders less. */
export function isOrdered({ place }: Leaf): boolean {
  return place[0] === 'orders'
}

/**
 * What takes things out of their orders; an order that has nothing else goes with them.
 *
 * @param gone leaves that name what goes, by `isOrdered`
 * @param all leaves of the document
 */
export function lessOrdered(gone: readonly Leaf[], all: readonly Leaf[]): readonly Change[] {
  const orders = [...new Set(gone.map(({ place }) => String(place[1])))]
  return orders.flatMap((order) => {
    const own = gone.filter(({ place }) => place[1] === order)
    const named = all.filter(({ place, meaning }) => place[0] === 'orders' && place[1] === order && meaning?.is === 'name')
    const places: readonly Place[] =
      named.length === own.length ? [['orders', order]] : own.map(({ place }) => place).toReversed()
    return places.map((place): Change => ({ kind: 'remove', place }))
  })
}
