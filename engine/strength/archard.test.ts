import { expect, it } from 'vitest'
import { archardVolume } from './archard.ts'

it('wear is that of a worked figure', () => {
  // SOURCE hand (K 1e-4, 50 N, 1000 m, 1 GPa: 1e-4 × 50 × 1e6 / 1000 = 5 mm³; over 3 mm × 6 mm that is 0.278 mm)
  const volume = archardVolume({ coefficient: 1e-4, force_N: 50, way_mm: 1e6, hardness_MPa: 1000 })
  expect(volume).toBeCloseTo(5, 9)
  expect(volume / (3 * 6)).toBeCloseTo(0.278, 3)
})
