import { describe, expect, it } from 'vitest'
import { arrayStock, copied } from './array-stock.ts'

describe('arrays from a stock', () => {
  it('have the size asked for, are zero and share no number', () => {
    const stock = arrayStock()
    const sizes = Array.from({ length: 2000 }, (_, index) => (7 * index) % 23)
    const arrays = sizes.map((size, index) => {
      const array = stock(size)
      // SOURCE property (fresh memory is zero)
      expect(array.every((value) => value === 0)).toBe(true)
      return array.fill(index + 1)
    })
    // SOURCE property (what was written into each is still there after all were written)
    for (const [index, array] of arrays.entries()) {
      expect(array.length).toBe(sizes[index])
      expect(array.every((value) => value === index + 1)).toBe(true)
    }
  })

  it('may be larger than a block', () => {
    expect(arrayStock()(100_000).length).toBe(100_000) // SOURCE property (the size asked for)
  })

  it('are copied without a tie to the original', () => {
    const values = Float64Array.of(1, 2, 3)
    const copy = copied(arrayStock(), values)
    values[0] = 9
    expect(Array.from(copy)).toEqual([1, 2, 3]) // SOURCE property (as it was when copied)
  })
})
