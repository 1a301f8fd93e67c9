import { describe, expect, it } from 'vitest'
import { type Quadratic, quadraticOf, valuesAlong } from './quadratic.ts'
import { fillTerms, tellingTerms, termsCount } from './terms.ts'

const slope = Float64Array.of(0.6, -0.48, 0.64)
const moves = Float64Array.of(3, 0.5, 2)

describe('a quadratic', () => {
  it('is the sum of the terms that it was fitted by', () => {
    const terms = tellingTerms(slope, moves, 8)
    const coefficients = Float64Array.of(1, 2, -3, 0.5, 0.7, -0.2, 0.4, 0.9)
    const inputs = [0.3, -1.1, 2.2]
    const row = new Float64Array(termsCount(terms))
    fillTerms(terms, inputs, row)
    const summed = row.reduce((sum, term, index) => sum + term * coefficients[index], 0)
    expect(valueAt(quadraticOf(terms, coefficients), inputs)).toBeCloseTo(summed, 12)
  })

  it('runs along a source as it does set by set', () => {
    const quadratic = quadraticOf(tellingTerms(slope, moves, 8), Float64Array.of(1, 2, -3, 0.5, 0.7, -0.2, 0.4, 0.9))
    const columns = [Float64Array.of(0.3, -0.4), new Float64Array(2), Float64Array.of(2.2, 1)]
    const { level, slope: along, bend } = valuesAlong(quadratic, columns, 1)
    for (const step of [-1.5, 0, 0.8])
      for (const row of [0, 1])
        expect(level[row] + step * (along[row] + bend * step)).toBeCloseTo(
          valueAt(quadratic, [columns[0][row], step, columns[2][row]]),
          12,
        )
  })
})

describe('telling terms', () => {
  it('begin with what moves the number farthest', () => {
    const { products } = tellingTerms(slope, moves, 4 + 4)
    // SOURCE hand: moves 3, 0.5, 2, all together √13.25 = 3.64: products 10.9, 9, 7.3, 6 are the largest.
    expect(products).toEqual([
      { source: 0, by: 'slope' },
      { source: 0, by: 0 },
      { source: 2, by: 'slope' },
      { source: 2, by: 0 },
    ])
  })

  it('are all pairs where there is room for them, and none where there is not', () => {
    expect(tellingTerms(slope, moves, 10).products).toHaveLength(6)
    expect(tellingTerms(slope, moves, 10).products.some(({ by }) => by === 'slope')).toBe(false)
    expect(tellingTerms(slope, moves, 3).products).toEqual([])
  })
})

function valueAt({ constant, slopes, bends }: Quadratic, inputs: readonly number[]): number {
  const straight = slopes.reduce((sum, one, source) => sum + one * inputs[source], constant)
  return bends.reduce(
    (sum, row, source) => row.reduce((own, bend, other) => own + bend * inputs[source] * inputs[other], sum),
    straight,
  )
}
