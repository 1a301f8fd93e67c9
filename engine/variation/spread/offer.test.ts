import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { readVariation } from '../sources/read-variation.ts'
import { judgedOffers } from './judged-offer.ts'
import { type Offer, offeredSizes, readOffer } from './offer.ts'
import { movedBy } from './set-change.ts'
import { spreadOf } from './spread.ts'
import { counted, smallProblem, standardNormals } from './test-support/small-problem.ts'

const { value: heron } = readVariation(readFileSync(new URL('../../../designs/heron.json', import.meta.url), 'utf8'))
if (!heron) throw new Error('the example is refused')

/** Values of a size with an offer, for values of its source. */
function moved(asked: string, values: readonly number[]): readonly number[] {
  const { value, problems } = readOffer(heron!, asked)
  if (!value) throw new Error(JSON.stringify(problems))
  return values.map((one) => movedBy(value.move, one))
}

describe('an offer of a shop', () => {
  it('spreads a size about where it stood: ±0.03 mm for ±0.01 mm', () => {
    // SOURCE hand (a link at its upper limit 24.517 mm comes to 24.507 + 0.03; one in the middle stays)
    const found = moved('topLinkLength=±0.03 mm', [24.517, 24.507, 24.502])
    for (const [index, value] of [24.537, 24.507, 24.492].entries()) expect(found[index]).toBeCloseTo(value, 10)
  })

  it('moves the middle where its sides are not even', () => {
    // SOURCE hand (limits 24.497 and 24.517 become 24.507 − 0.01 and 24.507 + 0.03)
    const found = moved('dimensions.topLinkLength=+0.03 mm/-0.01 mm', [24.497, 24.517])
    expect(found[0]).toBeCloseTo(24.497, 10)
    expect(found[1]).toBeCloseTo(24.537, 10)
  })

  it('takes the film off a coated size: a hole of ±0.006 mm is drilled closer, because its anodise varies', () => {
    const [hole] = heron.sources.filter(({ id }) => id === 'dimensions.holeDiameter')
    const film_mm = 0.012 - (hole.most - hole.least)
    expect(film_mm).toBeGreaterThan(0.001)
    const [least, most] = moved('holeDiameter=±0.010 mm', [hole.least, hole.most])
    // SOURCE hand (the width of ±0.010 mm less what the film takes)
    expect(most - least).toBeCloseTo(0.02 - film_mm, 10)
    expect(readOffer(heron, 'holeDiameter=±0.0005 mm').problems).toMatchObject([
      { found: '“±0.0005 mm” is less than the coating takes of it' },
    ])
  })

  it('widens a zone in both directions', () => {
    // SOURCE hand (0.05 mm over the 0.02 mm that is drawn)
    expect(moved('parts.middle.holes.dip.position=0.05 mm', [0.4, -1])).toEqual([1, -2.5])
  })

  it('can be asked of sizes only, not of friction, films as they come or wearers', () => {
    const names = offeredSizes(heron).map(({ name }) => name)
    expect(names).toContain('pinDiameter')
    expect(names).toContain('parts.distal.holes.top.position')
    expect(names.some((name) => /friction|drive/.test(name))).toBe(false)
  })

  it.each([
    ['topLinkLength', 'has no ='],
    ['topLink=±0.03 mm', 'no size with a tolerance has this name'],
    ['topLinkLength=0.03 mm', 'not what a shop could hold'],
    ['topLinkLength=±0 mm', 'not what a shop could hold'],
    ['topLinkLength=±0.03 N', 'topLinkLength “0.03 N”'],
    ['parts.middle.holes.dip.position=±0.03 mm', 'not what a shop could hold'],
  ])('%s is refused with the way out', (asked, found) => {
    const [problem] = readOffer(heron, asked).problems ?? []
    expect(`${problem?.place} ${problem?.found}`).toContain(found)
    expect(problem?.needed.length).toBeGreaterThan(4)
  })
})

it('an offer costs the yield that a wider spread costs', () => {
  // A sum of two standard normals, at least −3: twice the spread of the first takes its deviation from √2 to √5.
  const problem = smallProblem({ sources: standardNormals(2), figure: ([a, b]) => a + b, atLeast: -3 })
  const spread = counted(problem, spreadOf(problem, { seed: 1, samples: 512 }))
  const [first] = problem.sources
  const size = {
    name: 'z0',
    words: 'z0',
    kind: 'length',
    isZone: false,
    drawn: { lower: -3, upper: 3 },
    sources: [first],
  } as const
  const offer: Offer = { size, typed: '±6 mm', move: { from: 0, to: 0, factor: 2 } }
  const [{ gain }] = counted(problem, judgedOffers(problem, spread, [offer]))
  // SOURCE hand (Φ(−3/√2) = 0.01695 and Φ(−3/√5) = 0.08986: a loss of 0.0729)
  expect(gain.least).toBeLessThan(-0.0729)
  expect(gain.most).toBeGreaterThan(-0.0729)
  expect(gain.most).toBeLessThan(0)
})
