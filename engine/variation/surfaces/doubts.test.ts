import { describe, expect, it } from 'vitest'
import { normalCdf } from '../../numbers/distributions/normal.ts'
import { doubtsOf, type Said, sure_misses } from './doubts.ts'

const said = (predicted: readonly number[], miss: number, over: Partial<Said> = {}): Said => {
  return { requirement: 0, isWhole: true, predicted: Float64Array.from(predicted), miss, ...over }
}

describe('doubts', () => {
  it('are those of normal misses up to where a surface is believed', () => {
    const far = Array.from({ length: 801 }, (_, index) => (index - 400) / 95)
    const { all } = doubtsOf([said(far, 1)])
    for (const [set, chance] of all.entries()) {
      // SOURCE other-method: the series of Φ, beyond four deviations nothing or all.
      const exact = Math.abs(far[set]) < sure_misses ? normalCdf(far[set]) : far[set] > 0 ? 1 : 0
      expect(Math.abs(chance - exact)).toBeLessThan(1e-6)
    }
  })

  it('of several requirements multiply, and the least sure number tells the distance', () => {
    const { all, single, distances } = doubtsOf([said([0.5, 9], 0.5), said([-0.2, 9], 0.1, { requirement: 1 })])
    // SOURCE hand: Φ(1) and Φ(−2), set by set.
    expect(all[0]).toBeCloseTo(normalCdf(1) * normalCdf(-2), 6)
    expect([...distances]).toEqual([1, 18])
    expect(single.get(1)?.[1]).toBe(1)
  })

  it('stay where a number below nothing is not the whole of its requirement', () => {
    expect(doubtsOf([said([-9], 1, { isWhole: false })]).distances[0]).toBe(0)
  })
})
