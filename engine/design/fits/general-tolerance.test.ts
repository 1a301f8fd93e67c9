import { expect, it } from 'vitest'
import { generalDeviation_mm, generalDeviation_rad } from './general-tolerance.ts'

// SOURCE standard ISO 2768-1:1989, table 1, bands 0.5 to 3, 6, 30, 120, 400 and 1000 mm: m and c read in public copies, f partly read, rest from memory
it.each([
  ['f', [0.05, 0.05, 0.1, 0.15, 0.2, 0.3]],
  ['m', [0.1, 0.1, 0.2, 0.3, 0.5, 0.8]],
  ['c', [0.2, 0.3, 0.5, 0.8, 1.2, 2]],
] as const)('class %s', (name, limits_mm) => {
  expect([3, 6, 30, 120, 400, 1000].map((size_mm) => generalDeviation_mm(name, size_mm))).toEqual(limits_mm)
  expect([0.5, 3.01, 6.01, 30.01, 120.01, 400.01].map((size_mm) => generalDeviation_mm(name, size_mm))).toEqual(limits_mm)
})

it('has nothing below 0.5 mm and above 2 m, and v nothing up to 3 mm', () => {
  // SOURCE standard ISO 2768-1:1989, table 1, from memory (one public copy has 0.05 mm below 0.5 mm; the standard has not)
  expect([0.499, 0, 2000.1].map((size_mm) => generalDeviation_mm('m', size_mm))).toEqual([undefined, undefined, undefined])
  expect([3, 3.01].map((size_mm) => generalDeviation_mm('v', size_mm))).toEqual([undefined, 0.5])
})

// SOURCE standard ISO 2768-1:1989, table 3, from memory: shorter side up to 10, 50, 120 and 400 mm, in minutes of arc
it.each([
  ['m', [60, 30, 20, 10]],
  ['c', [90, 60, 30, 15]],
  ['v', [180, 120, 60, 30]],
] as const)('class %s of angles', (name, minutes) => {
  const found = [10, 10.01, 120, 400].map((side_mm) => ((generalDeviation_rad(name, side_mm) ?? 0) * 180 * 60) / Math.PI)
  for (const [index, value] of minutes.entries()) expect(found[index]).toBeCloseTo(value, 9)
  expect(generalDeviation_rad(name, 400.1)).toBeUndefined()
})
