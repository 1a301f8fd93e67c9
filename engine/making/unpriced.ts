import type { Design } from '../design/design.ts'

/** What goes into a finger without a price: places of parts, pins and springs that no order makes, and of screws that state none. */
export function unpriced({ parts, pins, springs, screws = [], orders }: Design): readonly string[] {
  const without = (section: 'parts' | 'pins' | 'springs', all: readonly { readonly id: string }[]): readonly string[] =>
    all.flatMap(({ id }, index) => (orders.some((order) => order[section].includes(index)) ? [] : [`${section}.${id}`]))
  return [
    ...without('parts', parts),
    ...without('pins', pins),
    ...without('springs', springs),
    ...screws.flatMap(({ id, each }) => (each === undefined ? [`screws.${id}`] : [])),
  ]
}
