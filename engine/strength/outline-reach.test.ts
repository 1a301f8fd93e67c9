import { expect, it } from 'vitest'
import { outlineReach } from './outline-reach.ts'

const at = (x_mm: number, y_mm: number) => ({ x_mm, y_mm })
const plate = [at(-4, -3), at(6, -3), at(6, 5), at(-4, 5)]

it.each([
  // SOURCE hand (sides of the rectangle at −4, 6, −3, 5)
  { x: 1, y: 0, reach: 6 },
  { x: -1, y: 0, reach: 4 },
  { x: 0, y: -1, reach: 3 },
  { x: Math.SQRT1_2, y: Math.SQRT1_2, reach: 5 * Math.SQRT2 },
])('a ray towards ($x, $y) leaves after $reach mm', ({ x, y, reach }) => {
  expect(outlineReach(plate, at(0, 0), { x, y })).toBeCloseTo(reach, 12)
})

it('of two sides on the way the first counts', () => {
  const notched = [at(-4, -3), at(6, -3), at(6, 5), at(2, 5), at(2, 1), at(1, 1), at(1, 5), at(-4, 5)]
  // SOURCE hand (the notch's wall at x = 1)
  expect(outlineReach(notched, at(0, 2), { x: 1, y: 0 })).toBeCloseTo(1, 12)
})

it('is nothing from outside, looking away', () => {
  expect(outlineReach(plate, at(9, 0), { x: 1, y: 0 })).toBe(0) // SOURCE property (no side on the way)
})
