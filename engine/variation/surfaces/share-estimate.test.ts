import { describe, expect, it } from 'vitest'
import { claimedVariance, estimateOf, noBetterThanLater, together, unjudged } from './share-estimate.ts'

const chances = Float64Array.of(1, 1, 1, 0.5, 0.5, 0.8, 0, 1)
const layers = [{ share: 3 / 8, chosen: [3, 5] }]

describe('the estimate of one round', () => {
  it('takes away what the surfaces got wrong among the judged', () => {
    const { value, variance, differing, allowed } = estimateOf({ chances, layers, isMet: (set) => set === 3 })
    // SOURCE hand: the mean of the chances is 5.8/8; judged less chance is 0.5 and −0.8, on the average −0.15, for 3/8 of the sets.
    expect(value).toBeCloseTo(5.8 / 8 - (3 / 8) * 0.15, 12)
    // SOURCE hand: (3/8 / 2)² (0.25 + 0.16), and the square of half a set in eight.
    expect(variance).toBeCloseTo((3 / 16) ** 2 * 0.41 + (1 / 16) ** 2, 12)
    expect(variance).toBe(claimedVariance(chances, layers))
    // SOURCE hand
    expect(differing).toBeCloseTo(0.25 + 0.64, 12)
    expect(allowed).toBeCloseTo(0.41, 12)
  })
})

describe('estimates together', () => {
  const [early, late] = [0.01, 4].map((variance) => ({ value: 0.9, variance, differing: 0, allowed: 0 }))

  it('trust no early round more than what later surfaces claim', () => {
    // SOURCE hand: the running maximum from the end.
    expect(noBetterThanLater([early, late], 1).map(({ variance }) => variance)).toEqual([4, 4])
    expect(noBetterThanLater([late, early], 1).map(({ variance }) => variance)).toEqual([4, 1])
  })

  it('are the surfaces’ own word where nothing is in doubt', () => {
    const sure = unjudged(Float64Array.of(1, 1, 0, 1))
    // SOURCE hand: worth 64 beside 0.25, so that the share lies within a hundredth of three quarters.
    expect(Math.abs(together([late, sure]).value - 0.75)).toBeLessThan(0.01)
  })

  it('know little before anything is judged', () => {
    // SOURCE hand: half of the sets at even chances may all be met, or none of them: a deviation of a quarter.
    expect(Math.sqrt(unjudged(new Float64Array(1000).map((_, set) => (set < 500 ? 0.5 : 1))).variance)).toBeCloseTo(0.25, 3)
  })
})
