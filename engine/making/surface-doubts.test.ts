import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { canBeMade } from './can-be-made.ts'
import { readShopDesign } from './drawn-sizes.ts'

type Typed = { [key: string]: Typed }
const heron = readFileSync(join(import.meta.dirname, '../../designs/heron.json'), 'utf8')

/** Doubts of heron with something typed otherwise; undefined leaves a key out. */
function doubts(changes: Readonly<Record<string, unknown>>, of: RegExp): readonly string[] {
  const document = JSON.parse(heron)
  for (const [place, value] of Object.entries(changes)) {
    const steps = place.split('.')
    const owner = steps.slice(0, -1).reduce((at: Typed, step) => at[step], document)
    owner[steps[steps.length - 1]] = value as Typed
  }
  const { value: shop, problems } = readShopDesign(JSON.stringify(document), 'heron')
  if (shop === undefined) throw new Error(JSON.stringify(problems))
  return canBeMade(shop).flatMap(({ place, found, needed }) => (of.test(place) ? [`${place}: ${found}; ${needed}`] : []))
}

describe('a tapped hole is doubted', () => {
  const of = /^screws\.front/
  const front = (changes: object) => ({ 'screws.front': { ...JSON.parse(heron).screws.front, ...changes } })

  it('not in the example', () => {
    // SOURCE hand: M2.5 × 0.45 in 6061; 5 ≥ 1.5 × 2.5; 8 − 5.5 ≥ 3 × 0.45; 5.5 ≤ 3 × 2.5
    expect(doubts({}, of)).toEqual([])
  })

  it.each<[string, object, string]>([
    ['that nobody describes', { tapClass: undefined, drill: undefined }, 'screws.front: a tapped hole without tapClass, drill'],
    // SOURCE hand: 1.5 × 2.5
    [
      'with little grip in light metal',
      { engagement: '3.7 mm' },
      '3.7 mm of M2.5 in grip in 6061-T6; at least 1.5 diameters, 3.75 mm',
    ],
    // SOURCE standard: ISO 724 and ISO 965-2, M2.5 × 0.45: minor diameter from 2.013 to 2.138 mm, from memory
    ['drilled too narrow', { drill: '2.012 mm' }, 'a drill of 2.012 mm before M2.5; from 2.013 to 2.138 mm'],
    ['drilled too wide', { drill: '2.14 mm' }, 'a drill of 2.14 mm before M2.5; from 2.013 to 2.138 mm'],
    ['with a drill that is not sold', { drill: '2.07 mm' }, 'a multiple of 0.05 mm'],
    ['without room for the tap', { drillDepth: '6.8 mm' }, '1.3 mm of hole below the thread; at least 3 pitches, 1.35 mm'],
    [
      'tapped too deep',
      { tapDepth: '7.6 mm', drillDepth: '9 mm' },
      'tapped 7.6 mm deep into a blind hole; at most 3 diameters, 7.5 mm',
    ],
  ])('%s', (_, changes, expected) => {
    const found = doubts(front(changes), of)
    expect(found).toHaveLength(1)
    expect(found[0]).toContain(expected)
  })

  it('not just inside of each bound', () => {
    // SOURCE property
    expect(doubts(front({ engagement: '3.75 mm', tapDepth: '7.5 mm', drill: '2.1 mm', drillDepth: '8.85 mm' }), of)).toEqual([])
  })
})

describe('surfaces and racks', () => {
  it.each<[string, Readonly<Record<string, unknown>>, RegExp, string]>([
    [
      'edges that nobody states',
      { 'parts.mount.outsideEdges': undefined, 'parts.mount.outsideEdgesFrom': undefined },
      /outsideEdges/,
      'nothing is stated',
    ],
    [
      'edges held closer than by hand',
      { 'parts.mount.outsideEdgesFrom': '-0.31 mm' },
      /outsideEdges/,
      '0.09 mm between the bounds',
    ],
    // SOURCE hand: a quarter of 1 mm
    ['edges that eat a plate', { 'parts.topLink.outsideEdges': '-0.26 mm' }, /outsideEdges/, 'metal 1 mm thick; at most 0.25 mm'],
    ['a rubbing surface without Ra', { 'pins.mcp.roughness': undefined }, /^pins\.mcp\.rough/, 'without Ra'],
    [
      'a stop edge without Ra',
      { 'parts.middle.roughness': undefined, 'parts.middle.edges.shelf.roughness': undefined },
      /shelf/,
      'without Ra',
    ],
    // SOURCE hand: before the film a pin has 2.968 to 2.974 and what rounding left, 6.9 µm; a tenth is 0.69
    ['a surface too rough for its limits', { 'pins.mcp.roughness': '0.8 um' }, /^pins\.mcp\.rough/, 'a tenth of the limits'],
    ['a hole too rough to turn in', { 'parts.middle.holes.pip.roughness': '1.7 um' }, /pip\.rough/, 'at most 1.6 µm'],
    ['a hole finer than a reamer leaves', { 'parts.middle.holes.pip.roughness': '0.3 um' }, /pip\.rough/, 'no finer than 0.4 µm'],
    ['a coated part that nobody hangs', { 'parts.mount.racks': undefined }, /racks/, 'nobody says how to hang'],
    // SOURCE hand: 6.47 + 1.506 + 0.9 is 0.9 mm beside the rim of the hole
    ['a rack beside a hole', { 'parts.mount.racks': [['8.876 mm', '3.43 mm']] }, /racks/, 'beside hole base'],
    ['coated threads', { 'parts.mount.masked': undefined }, /masked/, 'four times'],
  ])('are doubted: %s', (_, changes, of, expected) => {
    expect(doubts({}, of)).toEqual([])
    expect(doubts(changes, of).join()).toContain(expected)
  })
})
