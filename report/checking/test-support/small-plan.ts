/** TEST SUPPORT. An inspection plan of one size and one place. */
import type { Characteristic } from '../../../engine/index.ts'

const size: Characteristic = {
  number: 1,
  id: 'dimensions.pin',
  words: 'dimension pin',
  kind: 'size',
  unit: 'mm',
  nominal: 3,
  least: 2.994,
  most: 3,
  piece: { kind: 'pin', id: 'pin', title: 'Pin pin' },
  sources: [0],
}
const place: Characteristic = {
  ...size,
  number: 2,
  id: 'parts.a.holes.b.position',
  kind: 'position',
  place: { x_mm: 26, y_mm: 0, zone_mm: 0.02 },
  sources: [1, 2],
}

/** Numbers 1 and 2. */
export const plan: readonly Characteristic[] = [size, place]
