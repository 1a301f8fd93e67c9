import { expect, it } from 'vitest'
import { spread } from './spread-labels.ts'

it('leaves labels alone that do not touch', () => {
  const wanted = [
    { at: 10, length: 8 },
    { at: 30, length: 8 },
  ]
  // SOURCE hand (20 apart, each 8 long)
  expect(spread(wanted, { least: 0, most: 100 })).toEqual([10, 30])
})

it('shares the way between two labels at one place', () => {
  const wanted = [
    { at: 50, length: 10 },
    { at: 50, length: 10 },
  ]
  // SOURCE hand (50 ± 10 / 2)
  expect(spread(wanted, { least: 0, most: 100 })).toEqual([45, 55])
})

it('never lets two labels cover each other, and keeps their order and the room', () => {
  for (const seed of [1, 2, 3, 4, 5, 6, 7, 8]) {
    const wanted = Array.from({ length: 7 }, (_, index) => ({
      at: (index * index * 37 * seed) % 101,
      length: 4 + ((index * seed) % 9),
    }))
    const places = spread(wanted, { least: 0, most: 100 })
    const order = wanted.map((_, index) => index).sort((one, other) => places[one] - places[other])
    for (const [place, index] of order.entries()) {
      const before = order[place - 1]
      if (before === undefined) continue
      // SOURCE property: middles are at least half of both lengths apart
      expect(places[index] - places[before]).toBeGreaterThanOrEqual((wanted[index].length + wanted[before].length) / 2 - 1e-6)
      expect(wanted[index].at).toBeGreaterThanOrEqual(wanted[before].at)
    }
    expect(Math.min(...places)).toBeGreaterThanOrEqual(0)
    expect(Math.max(...places)).toBeLessThanOrEqual(100)
  }
})
