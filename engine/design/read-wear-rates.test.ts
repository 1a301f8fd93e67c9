import { describe, expect, it } from 'vitest'
import { readDesign } from './read-design.ts'
import { tableWearRates } from './read-wear-rates.ts'
import { documentText } from './test-support/full-document.ts'

describe('the table of rates of wear', () => {
  it.each([
    // SOURCE paper (K of Archard and Hirst 1956, from memory; k = K / H with the hardness that the row names)
    { row: 'hardened steel on hardened steel, dry', K: 1.3e-4, hardness_MPa: 8500 },
    { row: 'mild steel on mild steel, dry', K: 7e-3, hardness_MPa: 1860 },
    { row: 'brass on hardened steel, dry', K: 6e-4, hardness_MPa: 950 },
    { row: 'PTFE on hardened steel, dry', K: 2.5e-5, hardness_MPa: 50 },
  ])('is K over hardness for $row', ({ row, K, hardness_MPa }) => {
    const likely = tableWearRates.get(row)?.likely_mm2_N ?? 0
    expect(Math.abs(likely / (K / hardness_MPa) - 1)).toBeLessThan(0.03)
  })

  it('has its values in order, within what wear is known to', () => {
    for (const { least_mm2_N, likely_mm2_N, most_mm2_N } of tableWearRates.values()) {
      expect(least_mm2_N).toBeLessThanOrEqual(likely_mm2_N)
      expect(likely_mm2_N).toBeLessThanOrEqual(most_mm2_N)
      expect(most_mm2_N / least_mm2_N).toBeLessThan(101) // SOURCE property (two orders of magnitude, no more is claimed)
    }
  })
})

it('a film leads to the pair that takes over', () => {
  const { value: design } = readDesign(documentText())
  const { wear } = design?.frictionPairs[0] ?? {}
  // SOURCE hand (8 µm = 0.008 mm; 5e-6 mm³/(N·m) = 5e-9 mm²/N)
  expect(wear?.film?.depth_mm).toBeCloseTo(0.008, 12)
  expect(wear?.film?.under.name).toBe('bare pin in hole')
  expect(wear?.film?.under.wear?.rate).toMatchObject({ name: 'own pair', likely_mm2_N: expect.closeTo(5e-9, 18) })
  expect(design?.pins[0].friction.wear?.film?.under.wear?.film).toBeUndefined()
})
