import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import type { Design } from '../../design/design.ts'
import { changeDocument } from '../../design/edit/change-document.ts'
import { readDesign } from '../../design/read-design.ts'
import { type Changes, documentText } from '../../design/test-support/full-document.ts'
import { readVariation } from './read-variation.ts'
import type { Variation } from './source.ts'

function variationOf(text: string): Variation {
  const { value, problems } = readVariation(text)
  if (!value) throw new Error(JSON.stringify(problems))
  return value
}

const crane = (changes: Changes = {}) => variationOf(documentText(changes))
const heronText = readFileSync(new URL('../../../designs/heron.json', import.meta.url), 'utf8')

/** A set with some sources off their nominal. */
function set({ sources, setOf }: Variation, changes: Readonly<Record<string, number>>): Design {
  const unknown = Object.keys(changes).filter((id) => !sources.some((source) => source.id === id))
  const { value, problems } = setOf(sources.map(({ id, nominal }) => changes[id] ?? nominal))
  if (!value || unknown.length > 0) throw new Error(JSON.stringify(problems ?? unknown))
  return value
}

const source = (variation: Variation, id: string) => variation.sources.find((one) => one.id === id)
const part = (design: Design, id: string) => design.parts.find((one) => one.id === id)!
const hole = (design: Design, [of, id]: readonly [string, string]) => part(design, of).holes.find((one) => one.id === id)!

describe('a set', () => {
  it('with everything at its nominal is the design as typed', () => {
    for (const variation of [crane(), variationOf(heronText)]) {
      const nominal = set(variation, {})
      const { frictionPairs, pins, stops, ...rest } = nominal
      // SOURCE property (only friction differs: in one set it has one value, by default the likely one)
      expect(rest).toEqual({ ...variation.design, frictionPairs: undefined, pins: undefined, stops: undefined })
      expect(pins.map(({ friction: _, ...pin }) => pin)).toEqual(variation.design.pins.map(({ friction: _, ...pin }) => pin))
      const { moving } = variation.design.frictionPairs[0]
      expect(frictionPairs[0].moving).toEqual({ least: moving.likely, likely: moving.likely, most: moving.likely })
      expect(stops[0].friction).toBe(frictionPairs.find(({ name }) => name === stops[0].friction.name))
    }
  })

  it('with another dimension is what the document with that dimension is', () => {
    const changed = changeDocument(heronText, [
      { kind: 'set', place: ['dimensions', 'topLinkLength', 'value'], value: '24.515 mm' },
      { kind: 'set', place: ['dimensions', 'pinDiameter', 'value'], value: '2.996 mm' },
    ])
    const typed = readDesign(changed).value!
    const made = set(variationOf(heronText), { 'dimensions.topLinkLength': 24.515, 'dimensions.pinDiameter': 2.996 })
    const sizes = ({ parts, pins, stops, springs, drive }: Design) => ({
      parts,
      pins: pins.map((pin) => pin.diameter_mm),
      stops: stops.map(({ round, gap_mm }) => ({ round, gap_mm })),
      springs,
      drive,
    })
    // SOURCE other-method (the document with both values written in, read from its text)
    expect(sizes(made)).toEqual(sizes(typed))
    // SOURCE hand (the stop is a round end of half the pin’s diameter)
    expect(made.stops[0].round.radius_mm).toBeCloseTo(1.498, 12)
  })

  it('with a pin thicker than its hole cannot be built, and says why', () => {
    const { sources, setOf } = variationOf(heronText)
    const { problems } = setOf(sources.map(({ id, nominal }) => (id === 'dimensions.pinDiameter' ? 3.02 : nominal)))
    expect(problems?.[0]).toMatchObject({ code: 'does not fit', place: 'pins.mcp.joins.1' })
  })

  it('has one coefficient for a pair, between least and likely or likely and most', () => {
    const made = set(crane(), { 'friction.pin on shelf': -0.5 })
    // SOURCE hand (half way from likely to least: moving (0.05 + 0.10)/2, at rest (0.06 + 0.12)/2)
    const { moving, rest } = made.stops[0].friction
    expect([moving.least, moving.most, rest.least, rest.most].map((value) => Number(value.toFixed(12)))).toEqual([
      0.075, 0.075, 0.09, 0.09,
    ])
    expect(set(crane(), { 'friction.pin in hole': 1 }).pins[0].friction.rest).toEqual({ least: 0.14, likely: 0.14, most: 0.14 })
  })

  it('has its springs and its wearer', () => {
    const made = set(crane(), {
      'springs.return.rate': 50,
      'springs.return.preload': 58,
      'springs.pull.initial': 0.95,
      'drive.effortMost': 2000,
    })
    expect(made.springs[0]).toMatchObject({ rate_Nmm_rad: 50, preload_Nmm: 58 })
    expect(made.springs[1]).toMatchObject({ initial_N: 0.95, rate_N_mm: 0.4 })
    expect(made.drive.travel.effortMost).toBe(2000)
    expect(
      crane()
        .sources.filter((one) => one.of === 'wearers')
        .map(({ id }) => id),
    ).toEqual(['drive.effortMost'])
  })
})

describe('the direction of a slot', () => {
  const owner = crane().design.parts.find(({ holes }) => holes.some(({ id }) => id === 'guide'))?.id ?? ''
  const along = `parts.${owner}.holes.guide.slot.along`

  it('turns by the general tolerance of angles, and the set with it', () => {
    // SOURCE standard ISO 2768-1:1989, table 3, from memory (class m, shorter side up to 10 mm: 1°)
    expect(source(crane(), along)).toMatchObject({
      unit: 'rad',
      least: expect.closeTo(-Math.PI / 180, 12),
      most: expect.closeTo(Math.PI / 180, 12),
    })
    expect(hole(set(crane(), { [along]: 0.01 }), [owner, 'guide']).slot?.along_rad).toBeCloseTo(0.01, 12)
  })

  it('follows an angle that has a tolerance of its own, and is held and told without any', () => {
    const stated = crane({
      'dimensions.lean': { value: '2 deg', tolerance: { plus: '0.5 deg', minus: '0.5 deg' } },
      [along]: 'lean',
    })
    expect(source(stated, along)).toBeUndefined()
    // SOURCE hand (2° and half a degree more)
    const leant = set(stated, { 'dimensions.lean': (2.5 * Math.PI) / 180 })
    expect(hole(leant, [owner, 'guide']).slot?.along_rad).toBeCloseTo((2.5 * Math.PI) / 180, 12)
    expect(crane({ generalTolerance: undefined }).untolerated).toContain(along)
  })
})

describe('a true position', () => {
  const place = 'parts.proximal.holes.mcp'

  it('is told in shares of the radius of its zone', () => {
    const variation = crane({ [`${place}.position`]: '0.5 mm', [`${place}.positionBonus`]: undefined })
    const { at } = hole(set(variation, { [`${place}.position.x`]: 0.6, [`${place}.position.y`]: 0.8 }), ['proximal', 'mcp'])
    // SOURCE book (table of coordinates and positions in drawing handbooks, from memory: 0.15 and 0.20 mm off are a position of 0.50 mm)
    expect([at.x_mm, at.y_mm]).toEqual([expect.closeTo(0.15, 12), expect.closeTo(0.2, 12)])
  })

  it('puts two holes as far apart as the zones of fasteners count on', () => {
    const apart = (zone: string) => {
      const zones = { [`${place}.position`]: zone, [`${place}.positionBonus`]: undefined, 'parts.mount.holes.mcp.position': zone }
      const made = set(crane(zones), { [`${place}.position.x`]: 1, 'parts.mount.holes.mcp.position.x': -1 })
      return hole(made, ['proximal', 'mcp']).at.x_mm - hole(made, ['mount', 'mcp']).at.x_mm
    }
    const [holeLeast_mm, boltMost_mm] = [3.94, 3.5]
    // SOURCE standard ASME Y14.5, appendix B, from memory: zones of 0.44 mm in both plates for a floating fastener (it may move in both holes:
    // all of the clearance), of 0.22 mm for one fixed in one plate (half of it)
    expect(apart('0.44 mm')).toBeCloseTo(holeLeast_mm - boltMost_mm, 12)
    expect(apart('0.22 mm')).toBeCloseTo((holeLeast_mm - boltMost_mm) / 2, 12)
  })

  it('has a bonus of what the hole is larger than its least size', () => {
    const id = `${place}.diameter`
    const at = (diameter_mm: number) =>
      hole(set(crane(), { [id]: diameter_mm, [`${place}.position.x`]: 1 }), ['proximal', 'mcp']).at.x_mm
    // SOURCE hand (zone 0.02 mm; H7 on 3.012 mm begins at 3.012: none there, 0.008 mm more diameter at 3.020)
    expect(at(3.012)).toBeCloseTo(0.01, 12)
    expect(at(3.02)).toBeCloseTo(0.014, 12)
  })

  it('needs a datum, and a part that has one does not', () => {
    const without = crane({ 'parts.proximal.holes.pip.datum': undefined })
    expect(source(without, `${place}.position.x`)?.needsDatum).toBe(true)
    expect(source(crane(), `${place}.position.x`)).toMatchObject({
      unit: '1',
      least: -1,
      most: 1,
      law: { kind: 'disc', deviation: 1 / 3 },
    })
    expect(source(crane(), `${place}.position.x`)?.needsDatum).toBeUndefined()
  })
})

describe('a coating', () => {
  const thin = 'coatings.thin film.thickness'
  const own = 'coatings.own anodise.thickness'

  it('is one source for all its surfaces', () => {
    const roomy = crane({ 'parts.middle.holes.guide.diameter': '2.01 mm' })
    const [plain, thick] = [set(roomy, {}), set(roomy, { [thin]: 0.0025, [own]: 0.012 })]
    // SOURCE hand (film: 0.5 µm above the middle, twice on the pin, once on the round stop; anodise: 2 µm above the middle, of which a third
    // stands out: 4/3 µm off a bore and 2/3 µm off the gap of its edge)
    expect(thick.pins[0].diameter_mm - plain.pins[0].diameter_mm).toBeCloseTo(0.001, 9)
    expect(thick.pins[1].diameter_mm).toBe(plain.pins[1].diameter_mm)
    expect(thick.stops[0].round.radius_mm - plain.stops[0].round.radius_mm).toBeCloseTo(0.0005, 9)
    expect(hole(thick, ['middle', 'pip']).diameter_mm - hole(plain, ['middle', 'pip']).diameter_mm).toBeCloseTo(-0.004 / 3, 9)
    expect(thick.stops[0].gap_mm).toBeCloseTo(-0.002 / 3, 9)
    expect(hole(thick, ['proximal', 'pip'])).toEqual(hole(plain, ['proximal', 'pip']))
  })

  it('takes its range off the tolerance, so that the finished size keeps its limits with every batch', () => {
    const { least, most } = source(crane(), 'pins.mcp.diameter')!
    // SOURCE hand (h6 on 3 mm: 2.994 to 3; the film is 0.5 µm either side of its middle: 1 µm on the diameter at each end)
    expect([least, most]).toEqual([expect.closeTo(2.995, 9), expect.closeTo(2.999, 9)])
    const thickest = set(crane(), { 'pins.mcp.diameter': most, [thin]: 0.0025 }).pins[0].diameter_mm
    expect(thickest).toBeCloseTo(3, 9)
  })
})

describe('sizes before coating', () => {
  it('are what the shop works to', () => {
    const sizes = crane().beforeCoating
    const pin = sizes.find(({ place }) => place === 'pins.mcp')
    // SOURCE hand (film of 1.5 to 2.5 µm: the pin gains 3 to 5 µm; h6 on 3 mm: 2.994 − 0.003 and 3 − 0.005)
    expect(pin).toMatchObject({ words: 'pin mcp: diameter', coating: 'thin film', finished: { least: 2.994, most: 3 } })
    expect([pin?.before.least, pin?.before.most]).toEqual([expect.closeTo(2.991, 9), expect.closeTo(2.995, 9)])
    const bore = sizes.find(({ place }) => place === 'parts.middle.holes.pip')
    // SOURCE hand (anodise of 8 to 12 µm, a third of it outwards: the bore loses 5.333 to 8 µm; ± 6 µm about 3.012)
    expect([bore?.before.least, bore?.before.most]).toEqual([
      expect.closeTo(3.006 + 0.008, 9),
      expect.closeTo(3.018 + 0.016 / 3, 9),
    ])
  })

  it('are those of coated surfaces with a tolerance only', () => {
    const places = crane().beforeCoating.map(({ place }) => place)
    expect(places).toEqual(['pip', 'base', 'dip'].map((hole) => `parts.middle.holes.${hole}`).concat('pins.mcp'))
  })
})

describe('sizes without a tolerance', () => {
  it('have that of their class, but for what follows a dimension, a zone, a datum or is 0', () => {
    const variation = crane()
    const general = variation.sources.filter(({ words }) => words.includes('ISO 2768-m')).map(({ id }) => id)
    // SOURCE hand (walked by eye through the parts of the document: holes without zone and datum whose places are not 0 and not computed
    // from a toleranced dimension)
    expect(general.filter((id) => id.startsWith('parts.middle'))).toEqual(
      ['base.x', 'base.y', 'dip.x', 'guide.x', 'guide.y', 'guide.diameter', 'guide.slot.along'].map(
        (key) => `parts.middle.holes.${key}`,
      ),
    )
    expect(general).not.toContain('parts.proximal.holes.pip.x')
    // SOURCE standard ISO 2768-1:1989, table 1, m: 6 to 30 mm ± 0.2, 3 to 6 mm ± 0.1; read in public copies
    expect(source(variation, 'parts.middle.holes.dip.x')).toMatchObject({ nominal: 26, least: 25.8, most: 26.2 })
    expect(source(variation, 'parts.middle.holes.base.x')).toMatchObject({ least: 3.9, most: 4.1 })
  })

  it('are told where nothing gives them one', () => {
    expect(crane().untolerated).toEqual([])
    expect(source(crane(), 'stops.closedStop.round.radius')?.words).toBe('stop closedStop round: radius, by ISO 2768-m')
    expect(source(crane(), 'stops.padStop.round.radius')).toBeUndefined()
    expect(crane({ generalTolerance: undefined }).untolerated).toContain('parts.middle.holes.dip.x')
    // SOURCE standard ISO 2768-1:1989: no value below 0.5 mm
    expect(crane({ 'parts.middle.holes.guide.y': '0.4 mm' }).untolerated).toEqual(['parts.middle.holes.guide.y'])
  })

  it('include edges that a stop runs against, which move along their normal', () => {
    const id = 'parts.middle.edges.boss.profile'
    expect(source(crane(), id)).toMatchObject({ least: -0.2, most: 0.2 })
    const made = set(crane(), { [id]: 0.1, 'parts.middle.edges.shelf.profile': 0.01 })
    const [shelf, boss] = part(made, 'middle').edges
    const back = 'stops.padStop.profile'
    expect(source(crane(), back)).toMatchObject({ least: -0.025, most: 0.025 })
    // SOURCE hand (a round end that lies 0.02 mm outside of where it is drawn leaves so much less of a gap)
    expect(set(crane(), { [back]: 0.02 }).stops[1].gap_mm).toBe(-0.02)
    // SOURCE hand (the boss is solid inside: outwards is a larger radius; the shelf runs along +x with its solid on the right, below: outwards is up)
    expect(boss).toMatchObject({ radius_mm: 4.1 })
    expect(shelf).toMatchObject({
      from: { x_mm: 20, y_mm: expect.closeTo(-2.99, 12) },
      to: { x_mm: 26, y_mm: expect.closeTo(-2.99, 12) },
    })
  })
})

describe('laws', () => {
  it('are those of the tolerance, else of the document, else uniform', () => {
    // SOURCE hand (± 6 µm less the 4/3 µm that the anodise of the middle’s holes takes, at a capability of 0.8: 4.6667/(3·0.8) = 1.9444 µm; 1.98 to 2.01 at 1.33: 15/(3·1.33) = 3.759 µm about 1.995)
    expect(source(crane(), 'dimensions.holeDiameter')?.law).toMatchObject({
      kind: 'truncatedNormal',
      mean: 3.012,
      deviation: expect.closeTo(0.00194444, 8),
    })
    expect(source(crane(), 'dimensions.inset')?.law).toEqual({
      kind: 'normal',
      mean: expect.closeTo(1.995, 12),
      deviation: expect.closeTo(0.0037594, 7),
    })
    expect(source(crane(), 'parts.proximal.holes.mcp.diameter')?.law).toEqual({
      kind: 'uniform',
      least: 3.012,
      most: expect.closeTo(3.024, 12),
    })
    expect(source(crane(), 'parts.mount.holes.base.diameter')?.law).toEqual({ kind: 'sample', values: [2.993, 2.994, 2.996] })
    expect(source(crane({ variation: undefined }), 'dimensions.inset')?.law.kind).toBe('uniform')
  })

  it('stand under names that are theirs alone', () => {
    for (const { sources } of [crane(), variationOf(heronText)]) {
      expect(new Set(sources.map(({ id }) => id)).size).toBe(sources.length)
      expect(new Set(sources.map(({ words }) => words)).size).toBe(sources.length)
      expect(sources.filter(({ least, most }) => !(most > least))).toEqual([])
    }
  })
})
