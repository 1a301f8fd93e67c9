import type { MakingDoubt } from './doubt.ts'
import type { ShopDesign } from './drawn-sizes.ts'
import { partDoubts } from './part-doubts.ts'
import { rackDoubts } from './rack-doubts.ts'
import { surfaceDoubts } from './surface-doubts.ts'
import { threadDoubts } from './thread-doubts.ts'
import { pinDoubts, reamerDoubts } from './tool-doubts.ts'
import { twinDoubts } from './twin-doubts.ts'

/** What a shop will stumble over, in the order of the document; empty where nothing was found. What is not looked at is in docs/limits.md. */
export function canBeMade(shop: ShopDesign): readonly MakingDoubt[] {
  const { parts, pins, variation } = shop
  return [
    ...parts.flatMap((drawn) => [...partDoubts(drawn.part), ...reamerDoubts(drawn)]),
    ...surfaceDoubts(shop),
    ...rackDoubts(variation.design),
    ...threadDoubts(variation.design),
    ...twinDoubts(parts.map(({ part }) => part)),
    ...pins.flatMap(pinDoubts),
  ]
}
