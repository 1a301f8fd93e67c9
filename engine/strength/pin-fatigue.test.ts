import { describe, expect, it } from 'vitest'
import type { Design } from '../design/design.ts'
import { pinFatigue } from './pin-fatigue.ts'
import { fibreSwings } from './pin-swing.ts'
import { heronBench, heron as withShares } from './test-support/heron-bench.ts'

const { shares: _, ...unshared } = withShares.use!
/** Every closing is under the worst load. */
const heron: Design = { ...withShares, use: unshared }
const pin = heron.pins.findIndex(({ id }) => id === 'topNear')
const joint = heronBench([]).mechanism.joints.findIndex((one) => one.pin === pin)
const margin = (...forces: readonly [number, number][]) =>
  pinFatigue(
    heronBench(
      forces.map((force) => ({ forces: { topNear: force } })),
      heron,
    ),
    pin,
  ).margin?.value ?? Number.NaN

describe('a pin that is bent and let go', () => {
  it('has the margin of its line and of Goodman', () => {
    // SOURCE hand (100 N: 136.75 MPa, of which 1/cos 11.25° is charged: 139.43, half of it amplitude, half mean; 300 × 365 × 2 = 219 000
    // closings: 982.5 × (433.6/982.5)^(ln 219 / ln 10⁴) = 609.0 MPa; 69.71 (1 + 609.0/1310.0) = 102.1; 609.0 / (1.5 × 102.1) − 1 = 2.976)
    expect(margin([100, 0])).toBeCloseTo(2.976, 2)
  })

  it('tires sooner where the force also comes from the other side in one load case', () => {
    // SOURCE hand (±139.43: 609.0 / (1.5 × 139.43) − 1 = 1.912)
    expect(margin([100, 0], [-100, 0])).toBeCloseTo(1.912, 2)
  })

  it('is judged load case by load case', () => {
    const apart = heronBench(
      [
        { forces: { topNear: [100, 0] }, loadCase: 'carry' },
        { forces: { topNear: [-100, 0] }, loadCase: 'pushBack' },
      ],
      heron,
    )
    expect(pinFatigue(apart, pin).margin?.value).toBeCloseTo(margin([100, 0]), 12) // SOURCE property (the same swing the other way)
  })

  it('loses in proportion to the load', () => {
    // SOURCE property (margin + 1 goes as one over the force)
    expect((margin([60, 80]) + 1) / (margin([120, 160]) + 1)).toBeCloseTo(2, 12)
  })

  it('is undecided without a life, and beyond what is known of the material', () => {
    const { use: __, ...without } = heron
    const forces = [{ forces: { topNear: [100, 0] } as const }]
    expect(pinFatigue(heronBench(forces, without), pin)).toMatchObject({ why: expect.stringContaining('use') })
    const long: Design = { ...heron, use: { closingsPerDay: 20_000, years: 2 } }
    expect(pinFatigue(heronBench(forces, long), pin)).toMatchObject({ why: expect.stringContaining('10000000 cycles') })
  })

  it('bears a load of a tenth of its closings as that tenth alone, and the others on top', () => {
    const carry = { forces: { topNear: [100, 0] }, loadCase: 'carry' } as const
    const grip = { forces: { topNear: [0, 90] }, loadCase: 'middleGrip' } as const
    const [alone, both, across] = [[carry], [carry, { ...grip, forces: { topNear: [90, 0] } as const }], [carry, grip]].map(
      (states) => pinFatigue(heronBench(states, withShares), pin),
    )
    // SOURCE hand (21 900 closings: 982.5 × (433.6/982.5)^(ln 21.9 / ln 10⁴) = 747.2 MPa; 69.71 (1/747.2 + 1/1310.0) = 0.14651; 1 / (1.5 × 0.14651) − 1)
    expect(alone.margin?.value).toBeCloseTo(3.55, 2)
    expect(alone).toMatchObject({ steps: expect.arrayContaining([expect.objectContaining({ value: 0.1, unit: '1' })]) })
    // SOURCE property (harm of two load cases adds up where they pull the same fibre, and hardly where they pull across)
    expect(both.margin?.value).toBeLessThan(alone.margin?.value ?? 0)
    expect(both.margin?.value).toBeLessThan(across.margin?.value ?? 0)
  })

  it('is spared where nothing presses', () => {
    expect(pinFatigue(heronBench([], heron), pin)).toMatchObject({ spared: true })
  })
})

describe('the swing along eight lines', () => {
  const degrees = Math.PI / 180
  it.each([3, 11.25, 17, 40, 71, 88])('is no less than that of the fibre at %s°, and at most 2 %% more', (turn) => {
    const [most, least] = [90, -30]
    const along = (force: number) => [force * Math.cos(turn * degrees), force * Math.sin(turn * degrees)] as const
    const { mechanism, states } = heronBench([{ forces: { topNear: along(most) } }, { forces: { topNear: along(least) } }])
    const swings = fibreSwings({ mechanism, states }, [{ joint, perN_MPa: 1 }]).flatMap((fibre) =>
      fibre.map(({ swing }) => swing),
    )
    const largest = Math.max(...swings.map(({ most_MPa }) => most_MPa))
    // SOURCE property (the fibre in line with the force feels all of it)
    expect(largest).toBeGreaterThanOrEqual(most - 1e-9)
    expect(largest).toBeLessThan(1.02 * most)
    const opposite = swings.find(({ most_MPa }) => most_MPa === largest)
    expect(opposite?.least_MPa).toBeLessThanOrEqual(least + 1e-9)
  })
})
