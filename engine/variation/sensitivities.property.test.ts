/** Each test works through whole designs, some dozens of evaluations: it runs with the property tests. */
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { readDesign } from '../design/read-design.ts'
import { evaluate } from '../evaluate.ts'
import type { Sensitivity } from './sensitivities.ts'
import { sensitivities } from './sensitivities.ts'

const file = (name: string): string => readFileSync(new URL(`../../designs/${name}.json`, import.meta.url), 'utf8')
const heron = file('heron')
const MARGIN = 'closed.toggle.distal.deadCentreMargin'
const DEG = Math.PI / 180

function figure(text: string, id: string): number {
  const design = readDesign(text).value
  if (!design) throw new Error('refused')
  return Number(evaluate(design).figures.find((one) => one.id === id)?.value)
}

const all = [...sensitivities(heron)].map(({ found }) => found)

function of(place: string): Sensitivity {
  const found = all.find(({ input }) => input.place.join('.') === place)
  if (!found) throw new Error(`no input ${place}`)
  return found
}

const change = (place: string, id: string): number => Number(of(place).changes.find((one) => one.figure === id)?.change)

describe('of heron', () => {
  it('0.1 mm on the upper link moves the margin as two documents made by hand differ', () => {
    // SOURCE other-method (two documents, the length written in, evaluated apart: half of their difference)
    const [less, more] = ['24.407 mm', '24.607 mm'].map((length) => figure(heron.replace('"24.507 mm"', `"${length}"`), MARGIN))
    expect(change('dimensions.topLinkLength.value', MARGIN)).toBeCloseTo((more - less) / 2, 10)
    // SOURCE other-method (cases/stop-place: −10.7° a mm by differences of 0.01 mm; a whole step bends the line by a tenth)
    expect(change('dimensions.topLinkLength.value', MARGIN) / DEG / -1.07).toBeCloseTo(1, 0)
  })

  it('a pin’s place moves the margin as two documents made by hand differ', () => {
    const [less, more] = ['4.23 mm', '4.43 mm'].map((y) => figure(heron.replace('"4.33 mm"', `"${y}"`), MARGIN))
    // SOURCE other-method (two documents, the place written in)
    expect(change('parts.proximal.holes.top.y', MARGIN)).toBeCloseTo((more - less) / 2, 10)
  })

  it('10 % of the drag takes as much of the reserve, which is counted in it', () => {
    // SOURCE hand (0.3 N·mm at every pin, a tenth of it is 0.03)
    expect(change('dimensions.pinDrag', 'return.reserveFromRest')).toBeCloseTo(-0.03, 9)
  })

  it('10 % of friction moves the jam angle by about 10 %, and no margin', () => {
    const pair = 'friction.filmed pin in hard-coated hole'
    // SOURCE property (the jam angle is a sum of friction angles, and these are nearly proportional to friction)
    expect(change(pair, 'closed.toggle.distal.jamAngle') / figure(heron, 'closed.toggle.distal.jamAngle')).toBeCloseTo(0.1, 2)
    expect(Math.abs(change(pair, MARGIN))).toBeLessThan(1e-12)
  })

  it('a load 10 % larger asks for more of the keeper, and more than 10 % of it', () => {
    // SOURCE property (friction and springs, which do not grow with the load, help the keeper a little)
    const share =
      change('loadCases.carry.forces.0.force', 'loadCase.carry.sustainingLoad') / figure(heron, 'loadCase.carry.sustainingLoad')
    expect(share).toBeGreaterThan(0.08)
    expect(share).toBeLessThan(0.12)
  })

  it('a step that the reader refuses is told with its problem, and the other side alone counts', () => {
    const { refused, changes } = of('dimensions.pinDiameter.value')
    // SOURCE hand (seven pins, each too thick for both of its holes)
    expect(refused.up?.map(({ code }) => code)).toEqual(Array(14).fill('does not fit'))
    expect(refused.down).toBeUndefined()
    const jam = changes.find((one) => one.figure === 'closed.toggle.distal.jamAngle')
    const thinner = figure(heron.replace('"value": "3 mm"', '"value": "2.9 mm"'), 'closed.toggle.distal.jamAngle')
    // SOURCE other-method (the document with the thinner pin, evaluated apart)
    expect(jam).toMatchObject({ onlySide: 'down' })
    expect(jam?.change).toBeCloseTo(figure(heron, 'closed.toggle.distal.jamAngle') - thinner, 10)
  })

  it('what is an expression, an outline, a tolerance or a bound is no input', () => {
    const places = all.map(({ input }) => input.place.join('.'))
    expect(
      places.filter((place) =>
        /outline|tolerance|within|profile|variation|orders|bought|making|requirements|drawn\.|effortMost|holes\.pip\.diameter/.test(
          place,
        ),
      ),
    ).toEqual([])
    expect(places).not.toContain('parts.middle.holes.dip.x')
    expect(places).toContain('dimensions.middleLength')
    expect(new Set(places).size).toBe(places.length)
  })

  it('the requirement that a step takes most of is named with the share', () => {
    const { takes } = of('springs.return.preload')
    const findings = evaluate(readDesign(heron).value!).findings.filter(({ margin }) => margin !== undefined && margin !== 0)
    const shareOf = ({ requirement, margin }: (typeof findings)[number]): number =>
      Math.abs((change('springs.return.preload', requirement.figure) || 0) / margin!)
    const shares = findings.map(shareOf)
    // SOURCE hand (the change of a figure over what its finding has to spare; the preload moves the return and the spring's own life)
    expect(shares.filter((share) => share > 0).length).toBeGreaterThan(1)
    expect(takes?.requirement).toBe(findings[shares.indexOf(Math.max(...shares))].requirement.id)
    expect(takes?.share).toBeCloseTo(Math.max(...shares), 12)
    expect(of('parts.distal.pads.tip.1').takes?.share ?? 0).toBeLessThan(1e-6)
  })
})

/** What a step of one input does; the inputs behind it are not worked through. */
function firstFound(text: string, place: string): Sensitivity | undefined {
  for (const { found } of sensitivities(text)) if (found.input.place.join('.') === place) return found
  return undefined
}

describe('the work', () => {
  it('can be stopped after any input, and tells how far it is', () => {
    const work = sensitivities(heron)
    expect(work.next()).toMatchObject({ done: false, value: { done: 1, of: all.length } })
    expect(work.next()).toMatchObject({ done: false, value: { done: 2, of: all.length } })
    expect(work.return([])).toEqual({ done: true, value: [] })
    expect(work.next().done).toBe(true)
  })

  it('on a document with problems is none', () => {
    expect([...sensitivities(heron.replace('"6.47 mm"', '"6.47"'))]).toEqual([])
  })

  it('goes through a finger that cannot be moved, where no figure changes', () => {
    const stuck = heron.replace('"24.507 mm"', '"44 mm"')
    expect(evaluate(readDesign(stuck).value!).travel).toBeUndefined()
    const found = [...sensitivities(stuck)].map((one) => one.found)
    expect(found.length).toBe(all.length)
    expect(found.filter(({ changes }) => changes.some((one) => one.change !== undefined))).toEqual([])
  })

  it('says of a step after which the finger cannot be moved why', () => {
    // SOURCE hand (as drawn the pins dip and topNear are 25.56 mm apart and the distal reaches √(2.27² + 5.41²) = 5.87 mm of that: the link
    // closes the loop from 19.69 mm on, so that 19.72 mm is enough and 0.1 mm less is not)
    const text = heron.replace('"24.507 mm"', '"19.72 mm"')
    const link = firstFound(text, 'dimensions.topLinkLength.value')
    expect(link?.refused.down).toMatchObject([{ code: 'cannot assemble' }])
    expect(link?.refused.up).toBeUndefined()
  })
})
