import { describe, expect, it } from 'vitest'
import type { Design } from '../design/design.ts'
import { assemble } from '../motion/assemble.ts'
import { mechanismOf } from '../motion/mechanism.ts'
import { USUAL_FACTORS } from './factors.ts'
import type { NamedStrength } from './named-strength.ts'
import type { Pressed } from './pressed.ts'
import type { Strength } from './strength.ts'
import type { StrengthBench } from './strength-bench.ts'
import { strengthOf } from './strength-of.ts'
import { heron } from './test-support/heron-bench.ts'

/** The example finger with a force at each pin that some pins are named for; x along the proximal phalanx, drawn posture. */
function bench(forces: Readonly<Record<string, readonly [number, number]>>, design: Design = heron): StrengthBench {
  const mechanism = mechanismOf(design)
  const { posture } = assemble(mechanism)
  if (!posture) throw new Error('the example does not go together')
  const all = mechanism.joints.flatMap(({ pin }) => forces[design.pins[pin].id] ?? [0, 0])
  const state: Pressed = { loadCase: 'carry', doing: 'holding', drive: 0, arc_ratio: 1, posture, forces: Float64Array.from(all) }
  return { mechanism, states: [state], factors: USUAL_FACTORS }
}

/** Two bars of 1 mm instead of one of 2. */
const bars = [
  { from_mm: -6.5, to_mm: -5.5 },
  { from_mm: 5.5, to_mm: 6.5 },
]

const checked = (given: StrengthBench, name: string): Strength | undefined =>
  strengthOf(given, { stops: [200], leant: [] }).find((check: NamedStrength) => check.name === name)?.strength
const margin = (given: StrengthBench, name: string): number => checked(given, name)?.margin?.value ?? Number.NaN

describe('the strength of the example finger', () => {
  it('bends the pin of a link between the cheeks of its fork', () => {
    // SOURCE hand (cheeks 4.5 wide, 4.5 away from a link 2 wide: M = F/2 (2.25 + 4.5 + 0.5) = 3.625 F; at 100 N 362.5 N·mm;
    // 32 M / (π 3³) = 136.8 MPa; breaks at 1310 MPa: 1310.0 / (2 × 136.75) − 1 = 3.79)
    const found = checked(bench({ topNear: [100, 0] }), 'pin.topNear.bending')
    expect(found?.margin?.limit.stress).toBeCloseTo(136.75, 1)
    expect(found?.margin?.limit.says).toBe('breaks')
    expect(found?.margin?.value).toBeCloseTo(3.79, 2)
  })

  it('shears it by half of the force on each side', () => {
    // SOURCE hand (4 × 50 / (π × 9) = 7.074 MPa; shears off at 123 ksi = 848.1 MPa: 848.1 / 14.147 − 1 = 58.9)
    expect(margin(bench({ topNear: [100, 0] }), 'pin.topNear.shear')).toBeCloseTo(58.9, 0)
  })

  it('tears the link out only at the end that the force points to', () => {
    const { posture } = assemble(mechanismOf(heron))
    const link = heron.parts.findIndex(({ id }) => id === 'topLink')
    const turn = posture?.[3 * link + 2] ?? Number.NaN
    const along = (force: number) => bench({ topNear: [force * Math.cos(turn), force * Math.sin(turn)] })
    // SOURCE hand (outwards: end 2.6 ahead, hole 3.012, 2 thick: 100 / (4 × 1.094) = 22.85 MPa; 848.1 / (2 × 22.85) − 1 = 17.56)
    expect(margin(along(-100), 'pin.topNear.tearOut')).toBeCloseTo(17.56, 1)
    // SOURCE hand (inwards the whole link lies ahead of the link's hole; then the phalanx is the worst)
    expect(checked(along(100), 'pin.topNear.tearOut')).toMatchObject({ part: 'proximal' })
  })

  it('dents a stop over as much as its round meets of the edge', () => {
    const stops = heron.stops.map((stop) => ({ ...stop, across: [{ from_mm: -3, to_mm: 2 }] }))
    const [whole, short] = [heron, { ...heron, stops }].map((design) => margin(bench({}, design), 'stop.shelf.contact') + 1)
    // SOURCE hand (line contact: p₀ goes as 1/√l; the middle phalanx lies from 1 to 5.5 on both sides: 9 mm, of which −3 to −1 and 1 to 2 are met)
    expect(short / whole).toBeCloseTo(Math.sqrt(3 / 9), 9)
  })

  it('falls when the load rises, in every check that a pin presses', () => {
    // SOURCE property (margin + 1 goes as one over the force)
    const [once, twice] = [60, 120].map((force) => bench({ topNear: [0, force], topFar: [0, force], pip: [force, 0] }))
    const both = strengthOf(once, { stops: [50], leant: [] }).map(({ name, strength }) => ({
      name,
      one: strength.margin?.value,
      two: margin(twice, name),
    }))
    // The parts also bear the pads' loads, which stay as they are here.
    const known = both.filter(({ one, name }) => one !== undefined && name.startsWith('pin.'))
    expect(known.length).toBeGreaterThan(12)
    for (const { one, two } of known) expect((two + 1) / ((one ?? 0) + 1)).toBeCloseTo(0.5, 9)
  })

  it('dents its stop as the line contact says', () => {
    // SOURCE hand (200 N over 9 mm, r 1.5; 1/E* = (1 − 0.27²)/196501 + (1 − 0.33²)/71016 = 1.7266e-5; p₀ = √(22.22 / (π 1.7266e-5 × 1.5)) =
    // 522.6 MPa; rubbed with at most 0.18 the shear is 0.3151 p₀ = 164.7; 7075-T6 yields at 455.1: 227.5 / (1.5 × 164.7) − 1 = −0.079)
    expect(margin(bench({}), 'stop.shelf.contact')).toBeCloseTo(-0.079, 3)
  })

  it('buckles two thin bars each by itself', () => {
    const { parts } = heron
    const apart = { ...heron, parts: parts.map((one) => (one.id === 'topLink' ? { ...one, across: bars } : one)) }
    const { posture } = assemble(mechanismOf(heron))
    const turn = posture?.[3 * parts.findIndex(({ id }) => id === 'topLink') + 2] ?? Number.NaN
    const [x, y] = [100 * Math.cos(turn), 100 * Math.sin(turn)]
    // SOURCE hand (5.2 wide, twice 1 thick: I = 2 · 5.2/12 = 0.8667, A = 10.4, k = 0.28868, λ = 24.507/0.28868 = 84.9 above 57.5, so Euler:
    // π² · 196501 · 10.4 / 84.9² = 2798 N; 2798.4 / (2 · 100) − 1 = 12.99)
    const pressed = [-1, 1].map((side) => bench({ topNear: [side * x, side * y], topFar: [-side * x, -side * y] }, apart))
    expect(pressed.map((one) => margin(one, 'link.topLink.buckling')).filter(Number.isFinite)).toEqual([expect.closeTo(12.99, 1)])
  })

  it('spares what nothing presses, and does not call it open', () => {
    const found = checked(bench({}), 'pin.dip.bearing')
    expect(found?.margin).toBeUndefined()
    expect(found).toMatchObject({ spared: true })
  })
})

describe('a check that cannot be worked out', () => {
  const without = (change: Partial<Design['parts'][number]>, part: string): Design => ({
    ...heron,
    parts: heron.parts.map((one) => {
      if (one.id !== part) return one
      const { across: _, thickness_mm: __, material: ___, ...rest } = one
      return { ...rest, ...change }
    }),
  })
  const material = heron.parts[1].material

  it.each([
    ['has no material', without({ thickness_mm: 2 }, 'topLink'), 'parts.topLink states no material'],
    ['has no thickness', without(material ? { material } : {}, 'topLink'), 'parts.topLink states no thickness'],
  ])('says which part %s', (_, design, why) => {
    expect(checked(bench({ topNear: [100, 0] }, design), 'pin.topNear.section')).toEqual({ why })
  })

  it('says which part does not tell where it lies', () => {
    const design = without({ thickness_mm: 2, ...(material && { material }) }, 'topLink')
    expect(checked(bench({ topNear: [100, 0] }, design), 'pin.topNear.bending')).toEqual({
      why: 'parts.topLink.across does not say where it lies across the finger',
    })
  })
})
