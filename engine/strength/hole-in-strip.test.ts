import { expect, it } from 'vitest'
import { holeInStrip } from './hole-in-strip.ts'

it.each([
  // SOURCE book (Peterson / Pilkey and Heywood, from memory; both worked out again)
  { ratio: 0.1, heywood: 2.729, peterson: 2.722 },
  { ratio: 0.2, heywood: 2.512, peterson: 2.508 },
  { ratio: 0.3, heywood: 2.343, peterson: 2.349 },
  { ratio: 0.5, heywood: 2.125, peterson: 2.159 },
])('a hole of $ratio of the width raises the stress as two handbooks say', ({ ratio, heywood, peterson }) => {
  expect(holeInStrip(ratio)).toBeCloseTo(heywood, 3)
  expect(Math.abs(holeInStrip(ratio) / peterson - 1)).toBeLessThan(0.017)
})

it('a small hole raises it threefold', () => {
  expect(holeInStrip(0)).toBe(3) // SOURCE book (Kirsch 1898, an infinite plate, from memory)
})
