import { describe, expect, it } from 'vitest'
import { lugFatigue } from './lug-fatigue.ts'
import { feltNotch, pulledHole } from './notch.ts'
import { heronBench, heron as withShares } from './test-support/heron-bench.ts'

const { shares: _, ...unshared } = withShares.use!
/** Every closing is under the worst load. */
const heron = { ...withShares, use: unshared }
const pin = heron.pins.findIndex(({ id }) => id === 'topNear')
const margin = (...forces: readonly [number, number][]) =>
  lugFatigue(
    heronBench(
      forces.map((force) => ({ forces: { topNear: force } })),
      heron,
    ),
    pin,
  )

describe('a hole that is pulled and let go', () => {
  it('loses in proportion to the load and gains nothing from a second, smaller pull', () => {
    // SOURCE property (margin + 1 goes as one over the force)
    const [one, two] = [margin([60, 80]), margin([120, 160])].map((found) => (found.margin?.value ?? Number.NaN) + 1)
    expect(one / two).toBeCloseTo(2, 12)
    expect((margin([120, 160], [60, 80]).margin?.value ?? Number.NaN) + 1).toBeCloseTo(two, 12)
  })

  it('is pulled hardest where the least material lies about it', () => {
    // SOURCE property (no direction is worse than all of the force at the least of all reaches, and none better than the nominal section)
    const all = Array.from({ length: 36 }, (_, step) => {
      const angle = (step * Math.PI) / 18
      return margin([100 * Math.cos(angle), 100 * Math.sin(angle)])
    })
    const stresses = all.map((found) => found.margin?.limit.stress ?? Number.NaN)
    expect(Math.min(...stresses)).toBeGreaterThan(0)
    // Each state alone is no worse than all together, and the worst alone is the worst together.
    const together = margin(
      ...Array.from({ length: 36 }, (_, step): [number, number] => {
        const angle = (step * Math.PI) / 18
        return [100 * Math.cos(angle), 100 * Math.sin(angle)]
      }),
    )
    expect(together.margin?.value).toBeCloseTo(Math.min(...all.map((found) => found.margin?.value ?? Number.NaN)), 9)
  })

  it('of a strip is what the parts of the formula make of it', () => {
    const link = heron.parts.findIndex(({ id }) => id === 'topLink')
    const wide = heron.parts.map((part, index) => {
      if (index !== link) return { ...part, across: [{ from_mm: -50, to_mm: 50 }] }
      const corners = [-6, 30].flatMap((x_mm) => [-6, 6].map((y_mm) => ({ x_mm, y_mm })))
      return { ...part, outline: [corners[0], corners[2], corners[3], corners[1]] }
    })
    const found = lugFatigue(heronBench([{ forces: { topNear: [0, 100] } }], { ...heron, parts: wide }), pin)
    expect(found).toMatchObject({ part: 'topLink' })
    // SOURCE hand (machined steel: 4.51 × 1310^−0.265 = 0.6731; 0.6731 × 0.85 × 0.814 × 620.5 = 289.0 at 10⁷; at
    // 219 000: 982.5 × (289.0/982.5)^0.5851 = 480.1; w is 12 within the 2 % of the table of reaches)
    const width_mm = 12
    const concentration = pulledHole({ hole_mm: 3.012, width_mm, clearance_mm: 0.012 }) ?? Number.NaN
    const felt = feltNotch(concentration, { radius_mm: 1.506, notchLength_mm: 0.0132 })
    const peak = (felt * 100) / ((width_mm - 3.012) * 2)
    const expected = 480.1 / (1.5 * (peak / 2) * (1 + 480.1 / 1310)) - 1
    expect(Math.abs(((found.margin?.value ?? Number.NaN) + 1) / (expected + 1) - 1)).toBeLessThan(0.03)
  })

  it('is pulled by every load case in its share', () => {
    const carry = { forces: { topNear: [100, 0] }, loadCase: 'carry' } as const
    const grip = { forces: { topNear: [100, 0] }, loadCase: 'distalGrip' } as const
    const [carried, gripped, both] = [[carry], [grip], [carry, grip]].map(
      (states) => lugFatigue(heronBench(states, withShares), pin).margin?.value ?? Number.NaN,
    )
    // SOURCE property (10 % of the closings do less harm than 25 % under the same load, both less than either, all under the worst most)
    expect(carried).toBeGreaterThan(gripped)
    expect(gripped).toBeGreaterThan(both)
    expect(both).toBeGreaterThan(margin([100, 0]).margin?.value ?? Number.NaN)
  })

  it('is not guessed where too little is left about the hole', () => {
    const parts = heron.parts.map((part) => ({ ...part, holes: part.holes.map((hole) => ({ ...hole, diameter_mm: 4.2 })) }))
    const found = lugFatigue(heronBench([{ forces: { topNear: [100, 0] } }], { ...heron, parts }), pin)
    expect(found).toMatchObject({ why: expect.stringContaining('three quarters') })
  })
})
