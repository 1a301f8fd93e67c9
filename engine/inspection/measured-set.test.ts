import { describe, expect, it } from 'vitest'
import { exampleText } from '../design/edit/test-support/example-texts.ts'
import { readDesign } from '../design/read-design.ts'
import { evaluate } from '../evaluate.ts'
import { readVariation } from '../variation/sources/read-variation.ts'
import { inspectionPlan } from './inspection-plan.ts'
import { foundOf, measuredDesign, measuredSet, type Reading, readingConformity } from './measured-set.ts'

const text = exampleText('heron')
const variation = readVariation(text, 'heron').value!
const plan = inspectionPlan(variation)
const named = (id: string) => plan.find((one) => one.id === id)!
const exactly = (id: string, value: number): Reading => ({ characteristic: named(id), size: { least: value, most: value } })

describe('the inspection plan', () => {
  it('numbers every limited size and place once, and nothing that is measured otherwise', () => {
    // SOURCE hand (read off the file): 14 holes and 7 pins that share two dimensions, two lengths of links, six holes with a zone of 0.02 mm
    // about a datum hole, one profile, two coatings
    expect(plan).toHaveLength(14 + 7 + 2 + 6 + 1 + 2)
    expect(plan.map(({ number }) => number)).toEqual(plan.map((_, index) => index + 1))
    expect(named('dimensions.topLinkLength')).toMatchObject({ kind: 'size', nominal: 24.507, sources: [expect.any(Number)] })
    expect(named('parts.middle.holes.dip.position')).toMatchObject({ kind: 'position', most: 0.01, place: { x_mm: 26, y_mm: 0 } })
    expect(plan.filter(({ kind }) => kind === 'position')).toHaveLength(6)
    expect(plan.some(({ id }) => /friction|springs/.test(id))).toBe(false)
    expect(named('dimensions.topLinkLength').piece).toMatchObject({ kind: 'part', id: 'topLink' })
    expect(named('coatings.film on the pins.thickness')).toMatchObject({ kind: 'film', least: 0.011, most: 0.013 })
  })

  it('limits a coated pin with its coating on, and before it by what the thickest and the thinnest batch leave', () => {
    const { least, most, before } = named('pins.mcp.diameter')
    // SOURCE standard: ISO 286-2, h7 up to 3 mm: 0 and −10 µm, from memory; SOURCE hand: 2 × 11 and 2 × 13 µm of film
    expect([least, most, before?.least, before?.most].map((limit) => Number(limit?.toFixed(6)))).toEqual([2.99, 3, 2.968, 2.974])
  })
})

it('a place is told from its datum hole, wherever that stands on the part, along the axes of the part', () => {
  const document = JSON.parse(text)
  const { holes } = document.parts.middle
  // SOURCE hand: the datum pip is drawn at 0, 0 and dip at 26, 0; with dip as the datum, pip lies at −26, 0
  expect(named('parts.middle.holes.dip.position').place).toMatchObject({ x_mm: 26, y_mm: 0, datum: 'pip' })
  const { datum: _, ...pip } = holes.pip
  const { position, ...dip } = holes.dip
  Object.assign(holes, { pip: { ...pip, position }, dip: { ...dip, datum: true } })
  const other = inspectionPlan(readVariation(JSON.stringify(document), 'heron').value!)
  const place = other.find(({ id }) => id === 'parts.middle.holes.pip.position')?.place
  expect(place).toMatchObject({ x_mm: -26, y_mm: 0, datum: 'dip' })
})

describe('a set as it was measured', () => {
  it('is the design as typed where nothing was measured, friction with its whole range', () => {
    const design = measuredDesign(variation, measuredSet(variation, [])).value!
    // SOURCE property
    expect(design.frictionPairs).toEqual(variation.design.frictionPairs)
    expect(design.parts.map(({ holes }) => holes)).toEqual(variation.design.parts.map(({ holes }) => holes))
  })

  it('gives the figures of a design in which the measured sizes were typed', () => {
    const typed = readDesign(
      text.replace('"value": "24.507 mm"', '"value": "24.513 mm"').replace('"x": "4.00 mm"', '"x": "4.006 mm"'),
    )
    const readings: Reading[] = [
      exactly('dimensions.topLinkLength', 24.513),
      { characteristic: named('parts.middle.holes.base.position'), at: { x_mm: 4.006, y_mm: -5.2 }, uncertainty_mm: 0 },
    ]
    const set = measuredSet(variation, readings)
    const design = measuredDesign(variation, set).value!
    const marginOf = (of: typeof design) =>
      evaluate(of).figures.find(({ id }) => id === 'closed.toggle.distal.deadCentreMargin')?.value
    // SOURCE other-method (the reader of documents)
    expect(marginOf(design)).toBeCloseTo(Number(marginOf(typed.value!)), 9)
    expect(set.unmeasured.length).toBe(variation.sources.filter((one) => one.of === 'sets').length - 3)
  })

  it('has each pin at its own size, and the stop that is a pin with it', () => {
    const pin = (id: string) => variation.design.pins.findIndex((one) => one.id === id)
    const design = measuredDesign(variation, measuredSet(variation, [exactly('pins.topFar.diameter', 2.996)])).value!
    // SOURCE hand: the shelf is met by pin topFar, of half its diameter; all other pins as drawn
    expect(design.pins[pin('topFar')].diameter_mm).toBeCloseTo(2.996, 12)
    expect(design.pins[pin('topNear')].diameter_mm).toBeCloseTo(3, 12)
    expect(design.stops[0].round.radius_mm).toBeCloseTo(1.498, 12)
  })

  it('lets a pin grow by the coating that the coater measured, until it is measured itself', () => {
    const bare: Reading = { ...exactly('pins.dip.diameter', 2.97), visit: 'before coating' }
    const coupon = exactly('coatings.film on the pins.thickness', 0.0125)
    const dip = (readings: Reading[]) =>
      measuredDesign(variation, measuredSet(variation, readings)).value!.pins.find(({ id }) => id === 'dip')!.diameter_mm
    // SOURCE hand: 2.97 + 2 × 0.012 as drawn; + 2 × 0.0125 by the coupon
    expect(dip([bare])).toBeCloseTo(2.994, 12)
    expect(dip([bare, coupon])).toBeCloseTo(2.995, 12)
    expect(dip([exactly('pins.dip.diameter', 2.999), bare, coupon])).toBeCloseTo(2.999, 12)
    expect(readingConformity(bare)).toBe('within')
    expect(readingConformity(exactly('pins.dip.diameter', 2.97))).toBe('outside')
  })

  it('says where it cannot be built', () => {
    const set = measuredSet(variation, [exactly('pins.dip.diameter', 3.05)])
    // SOURCE hand: 3.05 does not go into 3.012
    expect(measuredDesign(variation, set).problems?.[0].found).toContain('a pin of 3.05 mm in a hole of 3.012 mm')
  })
})

describe('a reading', () => {
  const place = named('parts.middle.holes.dip.position')

  it('of a place is its distance from the true one', () => {
    const reading: Reading = { characteristic: place, at: { x_mm: 26.006, y_mm: 0.008 }, uncertainty_mm: 0 }
    // SOURCE hand: 3-4-5
    expect(foundOf(reading).most).toBeCloseTo(0.01, 12)
    expect(readingConformity({ ...reading, at: { x_mm: 26.006, y_mm: 0.0081 } })).toBe('outside')
    expect(readingConformity({ ...reading, at: { x_mm: 26, y_mm: 0 } })).toBe('within')
    expect(readingConformity({ ...reading, uncertainty_mm: 0.002 })).toBe('undecided')
  })

  it('of a gauge that goes and one that does not counts with its middle', () => {
    const hole: Reading = { characteristic: named('parts.middle.holes.dip.diameter'), size: { least: 3.01, most: 3.012 } }
    const { diameters } = measuredSet(variation, [hole])
    // SOURCE hand
    expect(diameters.get('parts.middle.holes.dip')?.value_mm).toBeCloseTo(3.011, 12)
    expect(readingConformity(hole)).toBe('within')
  })
})
