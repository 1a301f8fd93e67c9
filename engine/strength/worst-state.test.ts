import { describe, expect, it } from 'vitest'
import { linkStrength } from './link-strength.ts'
import { pinBending, pinShear } from './lug.ts'
import { lugStrength } from './lug-strength.ts'
import { pinBeam } from './pin-beam.ts'
import { pinStrength } from './pin-strength.ts'
import type { Strength } from './strength.ts'
import type { StrengthBench } from './strength-bench.ts'
import { type ForcesOfPins, heron, heronBench } from './test-support/heron-bench.ts'

/** Forty states in three load cases: the force of each pin goes round and comes and goes, each at its own pace. */
const given = Array.from({ length: 40 }, (_, state) => {
  const entries = heron.pins.map(({ id }, pin) => {
    const size = 60 + 40 * Math.sin(1.7 * state + pin)
    const turn = 0.9 * state + 2.1 * pin
    return [id, [size * Math.cos(turn), size * Math.sin(turn)]] as const
  })
  return { forces: Object.fromEntries(entries) as ForcesOfPins, loadCase: `case ${state % 3}` }
})
const all = heronBench(given)
const alone = given.map((state) => heronBench([state]))

const marginOf = ({ margin }: Strength): number => margin?.value ?? Number.POSITIVE_INFINITY
const leastAlone = (check: (bench: StrengthBench) => Strength): number =>
  Math.min(...alone.map((bench) => marginOf(check(bench))))

describe('the worst of many states', () => {
  it.each(heron.pins.map(({ id }, pin) => [id, pin] as const))(
    'is the least margin of each state by itself, at pin %s',
    (_, pin) => {
      // SOURCE property (a minimum over states is the least of what each state gives alone, where nothing can be passed over)
      for (const name of ['bearing', 'tearOut', 'section'] as const) {
        const check = (bench: StrengthBench) => lugStrength(bench, pin)[name]
        expect(marginOf(check(all))).toBeCloseTo(leastAlone(check), 12)
      }
      for (const name of ['shear', 'bending'] as const) {
        const check = (bench: StrengthBench) => pinStrength(bench, pin)[name]
        expect(marginOf(check(all))).toBeCloseTo(leastAlone(check), 12)
      }
    },
  )

  it('is the least margin of each state by itself, of every link', () => {
    for (const [part, { role }] of heron.parts.entries()) {
      if (role !== 'link') continue
      for (const name of ['tension', 'buckling'] as const) {
        const check = (bench: StrengthBench) => linkStrength(bench, part)[name]
        // SOURCE property (as above)
        expect(marginOf(check(all))).toBeCloseTo(leastAlone(check), 12)
      }
    }
  })
})

describe('a pin of two parts', () => {
  it('is bent as by what each of its slices gives it in that state', () => {
    const pin = heron.pins.findIndex(({ id }) => id === 'topNear')
    const { diameter_mm, joins, fixedIn } = heron.pins[pin]
    const force = { x_N: 30, y_N: -70 }
    const plates = joins.flatMap(({ part }) => {
      const slices = heron.parts[part].across ?? []
      const width = slices.reduce((sum, { from_mm, to_mm }) => sum + to_mm - from_mm, 0)
      const side = part === fixedIn ? 1 : -1
      return slices.map(({ from_mm, to_mm }) => {
        const share = (side * (to_mm - from_mm)) / width
        return { from_mm, to_mm, x_N: share * force.x_N, y_N: share * force.y_N, fixed: part === fixedIn }
      })
    })
    const beam = pinBeam(plates)
    const { shear, bending } = pinStrength(heronBench([{ forces: { topNear: [force.x_N, force.y_N] } }]), pin)
    // SOURCE other-method (the beam under both components of the force, slice by slice, instead of one newton in proportion)
    expect(bending.margin?.limit.stress).toBeCloseTo(pinBending(beam?.moment_Nmm ?? Number.NaN, diameter_mm), 9)
    expect(shear.margin?.limit.stress).toBeCloseTo(pinShear(beam?.shear_N ?? Number.NaN, diameter_mm), 9)
  })
})
