import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { readVariation } from '../sources/read-variation.ts'
import { priceCurve } from './price-curve.ts'
import { type PricedSize, pricedSizes } from './priced-sizes.ts'
import { spreadOf } from './spread.ts'
import { counted, smallProblem, standardNormals } from './test-support/small-problem.ts'

/** A sum of two standard normals that has to be at least −3. */
const problem = smallProblem({ sources: standardNormals(2), figure: ([a, b]) => a + b, atLeast: -3 })

/** A priced size: prices, and what its spread is multiplied by. */
function priced(place: number, drawn: number, offers: readonly (readonly [price: number, factor: number])[]): PricedSize {
  const { [place]: source } = problem.sources
  const size = {
    name: source.id,
    words: source.id,
    kind: 'length',
    isZone: false,
    drawn: { lower: -3, upper: 3 },
    sources: [source],
  } as const
  const offered = offers.map(([price, factor]) => {
    return { price, offer: { size, typed: `±${3 * factor} mm`, move: { from: 0, to: 0, factor } } }
  })
  return { size, tolerances: [{ price: drawn }, ...offered] }
}

describe('what tolerances cost', () => {
  it('is told of the combinations that no cheaper one beats, with the yield that each has', () => {
    const spread = counted(problem, spreadOf(problem, { seed: 1, samples: 512 }))
    const [first, second] = [
      priced(0, 10, [
        [16, 0.5],
        [7, 3],
      ]),
      priced(1, 10, [[4, 2]]),
    ]
    const points = counted(problem, priceCurve({ problem, spread, target_ratio: 0.95 }, [first, second]))
    const chosen = points.map(({ price, choices }) => [price, ...choices.map(({ typed }) => typed ?? 'drawn')])
    // SOURCE hand (yields Φ(3/√(s₀² + s₁²)): 0.797 for 11, 0.910 for 14, 0.829 for 17, 0.983 or 0.927 for 20, 0.996 for 26)
    expect(chosen).toEqual([
      [11, '±9 mm', '±6 mm'],
      [14, 'drawn', '±6 mm'],
      [20, 'drawn', 'drawn'],
      [26, '±1.5 mm', 'drawn'],
    ])
    // SOURCE hand (Φ(3/√13) = 0.7973, Φ(3/√5) = 0.9101, Φ(3/√2) = 0.9831, Φ(3/√1.25) = 0.9963, each less Φ(3/√2))
    for (const [index, gain] of [-0.1858, -0.073, 0, 0.0132].entries()) {
      expect(points[index].gain.least).toBeLessThanOrEqual(gain)
      expect(points[index].gain.most).toBeGreaterThanOrEqual(gain)
    }
  })

  it('is told of what is drawn as well, where a cheaper one is as good', () => {
    const spread = counted(problem, spreadOf(problem, { seed: 1, samples: 64 }))
    const points = counted(problem, priceCurve({ problem, spread, target_ratio: 0.95 }, [priced(0, 10, [[9, 0.9]])]))
    // SOURCE property
    expect(points.map(({ price, gain }) => [price, gain.value >= 0])).toEqual([
      [9, true],
      [10, true],
    ])
  })

  it('is nothing without prices', () => {
    const spread = counted(problem, spreadOf(problem, { seed: 1, samples: 64 }))
    expect(counted(problem, priceCurve({ problem, spread, target_ratio: 0.95 }, []))).toEqual([])
  })
})

describe('prices of tolerances in a document', () => {
  const heron = JSON.parse(readFileSync(new URL('../../../designs/heron.json', import.meta.url), 'utf8'))
  const reading = (...prices: readonly unknown[]) =>
    readVariation(JSON.stringify({ ...heron, variation: { ...heron.variation, prices } }))
  const link = { size: 'topLinkLength', drawn: 11, offers: [{ tolerance: '±0.02 mm', price: 8 }], source: 'invented' }

  it('are read with the tolerance that is drawn as the first', () => {
    const { value } = reading(link)
    const [{ size, tolerances }] = (value && pricedSizes(value).value) ?? []
    expect([size.name, tolerances.map(({ price, offer }) => [price, offer?.typed])]).toEqual([
      'topLinkLength',
      [
        [11, undefined],
        [8, '±0.02 mm'],
      ],
    ])
  })

  it.each([
    [{ ...link, size: 'topLink' }, 'variation.prices.0.size', '“topLink”'],
    [
      { ...link, offers: [{ tolerance: '0.02 mm', price: 8 }] },
      'variation.prices.0.offers.0.tolerance',
      'not what a shop could hold',
    ],
    [{ ...link, drawn: -1 }, 'variation.prices.0.drawn', '-1'],
    [{ ...link, offers: [] }, 'variation.prices.0.offers', ''],
  ])('are refused at their place: %j', (one, place, found) => {
    const [problem] = reading(one).problems ?? []
    expect(problem).toMatchObject({ place, found: expect.stringContaining(found), line: expect.any(Number) })
  })
})
