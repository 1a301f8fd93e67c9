import { describe, expect, it } from 'vitest'
import { exampleText } from '../design/edit/test-support/example-texts.ts'
import { readVariation } from '../variation/sources/read-variation.ts'
import { inspectionPlan } from './inspection-plan.ts'
import type { Reading } from './measured-set.ts'
import { measuredSpread, measuredVariation } from './measured-spread.ts'
import { suggestedGauge } from './suggested-gauge.ts'
import { weighPlan } from './weigh-plan.ts'

const variation = readVariation(exampleText('heron'), 'heron').value!
const plan = inspectionPlan(variation)
const named = (id: string) => plan.find((one) => one.id === id)!
const within = (id: string, least: number, most: number): Reading => ({ characteristic: named(id), size: { least, most } })

describe('what of a measured set still varies', () => {
  it('is what nobody measured and what the gauge left open', () => {
    const readings: Reading[] = [
      within('dimensions.topLinkLength', 24.507, 24.507),
      within('pins.dip.diameter', 2.995, 2.997),
      { characteristic: named('parts.middle.holes.dip.position'), at: { x_mm: 26.002, y_mm: 0 }, uncertainty_mm: 0.002 },
    ]
    const { sources, setOf } = measuredVariation(variation, readings)
    const ids = sources.map(({ id }) => id)
    // SOURCE property
    expect(ids).not.toContain('dimensions.topLinkLength')
    expect(ids).not.toContain('parts.middle.holes.dip.position.x')
    expect(ids).toContain('dimensions.pinDiameter')
    const x = sources.find(({ id }) => id === 'parts.middle.holes.dip.position.0')!
    // SOURCE hand: 2 µm off and 2 µm either way, in shares of a radius of 10 µm
    expect([x.least, x.nominal, x.most].map((share) => Number(share.toFixed(9)) + 0)).toEqual([0, 0.2, 0.4])
    const values = sources.map(({ id, nominal }) => (id === 'pins.dip.diameter' ? 2.9955 : nominal))
    expect(setOf(values).value?.pins.find(({ id }) => id === 'dip')?.diameter_mm).toBeCloseTo(2.9955, 12)
  })

  it('is not a dimension of which every pin was measured', () => {
    const readings = variation.design.pins.map(({ id }) => within(`pins.${id}.diameter`, 2.995, 2.995))
    // SOURCE property
    expect(measuredVariation(variation, readings).sources.some(({ id }) => id === 'dimensions.pinDiameter')).toBe(false)
  })

  it('counts a set through which a link cannot go as one that works in no way', () => {
    const asked = { seed: 1, samples: 16 }
    const { yields } = measuredSpread(variation, [within('dimensions.topLinkLength', 24.7, 24.7)], asked)
    // SOURCE hand: 0.19 mm are twenty tolerances; the toggle passes dead centre
    expect(yields.all.short.value).toBe(1)
  })
})

describe('what a size matters to', () => {
  it('is told by the requirement that loses most at the ends of the tolerance', () => {
    const asked = ['dimensions.topLinkLength', 'parts.mount.holes.mcp.diameter', 'parts.middle.edges.shelf.profile'].map(named)
    const weighing = weighPlan(variation, asked)
    let step = weighing.next()
    while (step.done !== true) step = weighing.next()
    const [link, fixedHole, shelf] = step.value
    // SOURCE property: the hole in which a pin is fixed has no play; the shelf moves the toggle towards dead centre
    expect(link?.share).toBeGreaterThan(0.05)
    expect(fixedHole).toBeUndefined()
    expect(shelf?.requirement).toBe('shortOfDeadCentre')
    // SOURCE hand: a tenth of 0.02 mm is far below what a caliper tells
    expect(suggestedGauge(asked[0], link)).toMatchObject({ gauge: 'micrometer over pins', onEvery: 'piece' })
    expect(suggestedGauge(asked[0], link).toTellApart).toBeCloseTo(0.002, 9)
    expect(suggestedGauge(asked[1], fixedHole)).toMatchObject({ gauge: 'pin gauges', onEvery: 'sample' })
  })
})
