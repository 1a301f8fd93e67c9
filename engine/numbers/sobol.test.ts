import { describe, expect, it } from 'vitest'
import { randomWords } from './random-words.ts'
import { type PointSequence, scrambledSobol, sobolDimensions, sobolSequence } from './sobol.ts'

function points({ fill, dimensions }: PointSequence, count: number): readonly Float64Array[] {
  return Array.from({ length: count }, (_, number) => {
    const out = new Float64Array(dimensions)
    fill(number, out)
    return out
  })
}

describe('the sequence as published', () => {
  it('begins as the authors print it', () => {
    // SOURCE paper (S. Joe and F. Y. Kuo, notes on generating Sobol' sequences, 2008, from memory; scipy 1.17 gives the same)
    const published = [
      [0, 0, 0],
      [0.5, 0.5, 0.5],
      [0.75, 0.25, 0.25],
      [0.25, 0.75, 0.75],
      [0.375, 0.375, 0.625],
      [0.875, 0.875, 0.125],
      [0.625, 0.125, 0.875],
      [0.125, 0.625, 0.375],
    ]
    const found = points(sobolSequence(3), 8).map((point) => [...point].map((value) => Math.floor(value * 8) / 8))
    expect(found).toEqual(published)
  })

  it('goes on to the last dimension of the table', () => {
    const sequence = sobolSequence(sobolDimensions)
    const at = (number: number): readonly number[] => {
      const out = new Float64Array(sobolDimensions)
      sequence.fill(number, out)
      return [3, 10, 63, 127, 255].map((dimension) => Math.floor(out[dimension] * 1024) / 1024)
    }
    // SOURCE other-method (scipy 1.17, an unscrambled sequence of 256 dimensions, points 37 and 1000)
    expect(at(37)).toEqual([0.921875, 0.015625, 0.828125, 0.671875, 0.453125])
    expect(at(1000)).toEqual([0.6767578125, 0.0849609375, 0.4462890625, 0.5439453125, 0.2490234375])
  })
})

describe('a scrambled sequence', () => {
  it('has one point in every slice of every dimension', () => {
    const found = points(scrambledSobol({ dimensions: 256, seed: 7, replicate: 3 }), 64)
    for (let dimension = 0; dimension < 256; dimension++) {
      // SOURCE property
      expect(new Set(found.map((point) => Math.floor(point[dimension] * 64))).size).toBe(64)
    }
  })

  it('is another one for another seed or replicate, and the same for the same', () => {
    const first = (seed: number, replicate: number) => points(scrambledSobol({ dimensions: 4, seed, replicate }), 3)
    expect(first(1, 0)).toEqual(first(1, 0))
    expect(first(1, 0)).not.toEqual(first(2, 0))
    expect(first(1, 0)).not.toEqual(first(1, 1))
  })

  it('every point is uniform over the scramblings', () => {
    const means = [0, 5, 1000].map((number) => {
      const out = new Float64Array(8)
      let sum = 0
      for (let replicate = 0; replicate < 400; replicate++) {
        scrambledSobol({ dimensions: 8, seed: 11, replicate }).fill(number, out)
        sum += out.reduce((all, value) => all + value, 0) / 8
      }
      return sum / 400
    })
    // SOURCE hand (the mean of 3200 uniform numbers is within 4 · √(1/12/3200) = 0.0204 of one half)
    for (const mean of means) expect(Math.abs(mean - 0.5)).toBeLessThan(0.0204)
  })

  it('is filled by chance beyond the table', () => {
    const found = points(scrambledSobol({ dimensions: 300, seed: 7, replicate: 0 }), 200)
    const late = found.flatMap((point) => [...point.slice(260)])
    // SOURCE hand (8000 uniform numbers: 4 · √(1/12/8000) = 0.0129)
    expect(Math.abs(late.reduce((sum, value) => sum + value, 0) / late.length - 0.5)).toBeLessThan(0.0129)
    expect(new Set(late).size).toBe(late.length)
  })

  it('its error falls faster than that of chance', () => {
    const errorOf = (count: number): number => {
      let square = 0
      for (let replicate = 0; replicate < 16; replicate++) {
        const found = points(scrambledSobol({ dimensions: 4, seed: 5, replicate }), count)
        const mean = found.reduce((sum, point) => sum + point.reduce((product, value) => product * (value + 0.5), 1), 0) / count
        square += (mean - 1) ** 2
      }
      return Math.sqrt(square / 16)
    }
    const order = Math.log2(errorOf(64) / errorOf(1024)) / 4
    // SOURCE paper (A. B. Owen 1997, from memory: about n^-3/2 for smooth functions; chance has n^-1/2)
    expect(order).toBeGreaterThan(1)
  })
})

describe('random words', () => {
  it('have as many ones as noughts in every digit', () => {
    const next = randomWords(42)
    const ones = new Array<number>(32).fill(0)
    for (let word = 0; word < 4000; word++) {
      const drawn = next()
      for (let digit = 0; digit < 32; digit++) ones[digit] += (drawn >>> digit) & 1
    }
    // SOURCE hand (binomial of 4000 halves: 5 · √1000 = 158)
    for (const count of ones) expect(Math.abs(count - 2000)).toBeLessThan(158)
  })
})
