import { describe, expect, it } from 'vitest'
import { springsThatFit } from './springs-that-fit.ts'
import type { WantedStraight, WantedTorsion } from './wanted-spring.ts'

const torsion: WantedTorsion = {
  kind: 'torsion',
  least_Nmm: 60,
  most_Nmm: 150,
  apart_rad: 1.3,
  over_mm: 8,
  outside_mm: 12,
  width_mm: 13,
  legs_mm: 20,
  cycles: 500_000,
}
const pushed: WantedStraight = {
  kind: 'compression',
  least_N: 5,
  most_N: 12,
  atLeast_mm: 20,
  atMost_mm: 14,
  over_mm: 3,
  outside_mm: 6,
}
const pulled: WantedStraight = {
  kind: 'tension',
  least_N: 5,
  most_N: 12,
  atLeast_mm: 30,
  atMost_mm: 42,
  over_mm: 0,
  outside_mm: 6,
}

describe('springs that fit', () => {
  it.each([torsion, pushed, pulled])(
    '$kind: do what is asked within the rounding of their diameter, and stay in their room',
    (wanted) => {
      const { springs } = springsThatFit(wanted)
      expect(springs.length).toBeGreaterThan(2)
      expect(springs.length).toBeLessThan(9) // SOURCE property (a short list)
      for (const { spring, range, checks, least, leftAround_mm, leftAlong_mm = 0 } of springs) {
        const most = wanted.kind === 'torsion' ? wanted.most_Nmm : wanted.most_N
        // SOURCE property (a diameter rounded to 0.1 of 4 mm and more moves D³ by up to 4 %)
        expect(Math.abs(range.most / most - 1)).toBeLessThan(0.04)
        const { wire_mm = 0, mean_mm = 0 } = spring.wire ?? {}
        expect(mean_mm + wire_mm + 2 * leftAround_mm).toBeCloseTo(wanted.outside_mm, 9)
        expect(mean_mm - wire_mm).toBeGreaterThanOrEqual(wanted.over_mm)
        expect(leftAround_mm).toBeGreaterThan(-1e-9)
        expect(leftAlong_mm).toBeGreaterThanOrEqual(0)
        const margins = Object.values(checks).flatMap((check) => (check.margin ? [check.margin.value] : []))
        expect(least).toBe(Math.min(...margins))
      }
      const order = springs.map(({ least }) => least)
      expect(order).toEqual([...order].sort((one, other) => other - one))
    },
  )

  it('are each another wire or diameter', () => {
    const names = springsThatFit(torsion).springs.map(({ spring }) => `${spring.wire?.material.name} ${spring.wire?.wire_mm}`)
    expect(new Set(names).size).toBe(names.length)
  })

  it('are none where there is no room', () => {
    expect(springsThatFit({ ...torsion, outside_mm: 8.5 })).toEqual({ springs: [], judged_count: 0 })
    expect(springsThatFit({ ...pulled, atLeast_mm: 5, atMost_mm: 17 }).springs).toEqual([])
  })

  it('bear no less in more room', () => {
    // SOURCE property (whatever fits into the smaller room fits into the larger)
    const [tight] = springsThatFit(torsion).springs
    const [wide] = springsThatFit({ ...torsion, outside_mm: 16, width_mm: 16 }).springs
    expect(wide.least).toBeGreaterThanOrEqual(tight.least)
  })
})
