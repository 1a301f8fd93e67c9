import { describe, expect, it } from 'vitest'
import type { Design } from '../../design/design.ts'
import { changeDocument } from '../../design/edit/change-document.ts'
import { exampleText, exampleTexts } from '../../design/edit/test-support/example-texts.ts'
import { readDesign } from '../../design/read-design.ts'
import { evaluate } from '../../evaluate.ts'
import type { Addition, Inputs } from './addition.ts'
import { additions } from './additions.ts'

function additionOf(text: string, kind: Addition['kind']): Addition {
  const found = additions(text).find((addition) => addition.kind === kind)
  if (!found) throw new Error(`no ${kind} can be added`)
  return found
}

function added(text: string, kind: Addition['kind'], inputs: Inputs = {}): string {
  const { value, problems } = additionOf(text, kind).propose(inputs)
  if (!value) throw new Error(JSON.stringify(problems))
  return changeDocument(text, value)
}

const kinds = [
  'part',
  'link',
  'pin',
  'hole',
  'pad',
  'stop',
  'torsion spring',
  'tension spring',
  'load case',
  'toggle',
  'requirement',
  'dimension',
] as const

describe.each([...exampleTexts])('to %s', (_, text) => {
  it.each(kinds)('a %s with its first values can be added, and added once more', (kind) => {
    const once = added(text, kind)
    expect(readDesign(once).problems).toBeUndefined()
    expect(readDesign(added(once, kind)).problems).toBeUndefined()
  })
})

describe('what is added to heron', () => {
  const heron = exampleText('heron')
  const evaluated = (text: string) => evaluate(readDesign(text).value!)

  it('is evaluated whatever it does to the mobility, which is said', () => {
    // SOURCE hand (Kutzbach: a loose part has 3 more freedoms; a link or a pin between two parts takes 1 or 2 from the one there is)
    expect(evaluated(added(heron, 'part')).mobility.degrees).toBe(1 + 3)
    expect(evaluated(added(heron, 'link')).mobility.degrees).toBe(0)
    expect(evaluated(added(heron, 'pin')).mobility.degrees).toBe(-1)
    for (const kind of ['part', 'link', 'pin'] as const) expect(evaluated(added(heron, kind)).problems.length).toBeGreaterThan(0)
  })

  it('a link is as long as its holes are apart as drawn', () => {
    const text = added(heron, 'link', { name: 'brace', from: 'mount.base', to: 'proximal.top' })
    const link = readDesign(text).value!.parts.find(({ id }) => id === 'brace')!
    // SOURCE hand (both parts are drawn at 0, 0, unturned: √((45.13 − 6.47)² + (4.33 − 3.43)²) = 38.670)
    expect(link.holes[1].at.x_mm).toBeCloseTo(Math.hypot(45.13 - 6.47, 4.33 - 3.43), 3)
  })

  it('a link goes on the pins that are there and makes none', () => {
    const text = added(heron, 'link', { name: 'brace', from: 'mount.base', to: 'proximal.top' })
    const { pins } = readDesign(text).value!
    expect(pins.map(({ id }) => id)).toEqual(readDesign(heron).value!.pins.map(({ id }) => id))
    const through = pins.filter(({ joins }) => joins.length === 3).map(({ id }) => id)
    expect(through).toEqual(['baseNear', 'topNear'])
  })

  it('a pin makes its holes in both parts at one place of the finger as drawn', () => {
    const text = added(heron, 'pin', { one: 'proximal', other: 'middle', x: '42 mm', y: '2 mm' })
    const design = readDesign(text).value!
    const pin = design.pins.at(-1)!
    const [inProximal, inMiddle] = pin.joins.map(({ part, hole }) => design.parts[part].holes[hole].at)
    const turn = -4 * (Math.PI / 180)
    const [x, y] = [42 - 44, 2]
    // SOURCE hand (proximal is drawn at 0, 0; middle at 44, 0, turned by −4°; assembled it stands within 0.01 mm of that)
    expect([inProximal.x_mm, inProximal.y_mm]).toEqual([42, 2])
    expect(inMiddle.x_mm).toBeCloseTo(Math.cos(turn) * x + Math.sin(turn) * y, 1)
    expect(inMiddle.y_mm).toBeCloseTo(Math.cos(turn) * y - Math.sin(turn) * x, 1)
  })

  it('a pin is proposed where both of its parts have metal about it', () => {
    const { asks } = additionOf(heron, 'pin')
    const typed = (id: string) => asks.find((ask) => ask.id === id)?.typed
    // SOURCE property (the reader of designs refuses a hole that breaks through; further out it does)
    expect(readDesign(added(heron, 'pin')).problems).toBeUndefined()
    const out = readDesign(added(heron, 'pin', { x: `${typed('x')} + 40 mm` })).problems ?? []
    expect(out.map(({ code }) => code)).toContain('too close')
  })

  it('a pin through two holes without pins makes no third', () => {
    const holes = added(added(heron, 'hole', { part: 'mount', name: 'eye', x: '5 mm' }), 'hole', { part: 'distal', name: 'eye' })
    const pinned = readDesign(added(holes, 'pin')).value!
    expect(pinned.pins.at(-1)?.joins.map(({ part }) => pinned.parts[part].id)).toEqual(['mount', 'distal'])
    expect(pinned.parts[0].holes).toHaveLength(readDesign(heron).value!.parts[0].holes.length + 1)
  })

  it('a stop that faces its round across a gap does not touch as drawn', () => {
    const text = added(heron, 'stop', {
      round: 'proximal.top',
      against: 'mount',
      towards: '180 deg',
      gap: '40 mm',
      radius: '2 mm',
    })
    const edge = readDesign(text).value!.parts[0].edges[0]
    // SOURCE hand (the mount is the frame: from the hole at 45.13, 4.33 back by 40 + 2, 3 up and 3 down; the solid is to the left, which is to the right of who goes down)
    expect(edge).toMatchObject({ from: { x_mm: 3.13, y_mm: 7.33 }, to: { x_mm: 3.13, y_mm: 1.33 } })
    expect(evaluated(text).problems).toEqual([])
  })

  it('a tension spring pulls as it was told, as drawn', () => {
    const text = added(heron, 'tension spring', { from: 'mount.base', to: 'proximal.top', pull: '6 N', rate: '3 N/mm' })
    const spring = readDesign(text).value!.springs.at(-1)!
    // SOURCE hand (38.670 − 6/3 = 36.670)
    expect(spring.kind === 'tension' && spring.freeLength_mm).toBeCloseTo(Math.hypot(45.13 - 6.47, 4.33 - 3.43) - 2, 3)
  })

  it.each([
    // SOURCE hand (the longest side of the mount runs from 9, 7.5 to −14, 9)
    ['rack point', 'mount', {}, ({ parts: [mount] }: Design) => mount.racks?.at(-1), { x_mm: -2.5, y_mm: 8.25 }],
    ['masked face', 'mount', { face: 'holes.base' }, ({ parts: [mount] }: Design) => mount.masked, ['threads', 'holes.base']],
    ['masked face', 'distal', {}, ({ parts }: Design) => parts[3].masked, ['holes']],
    ['screw', undefined, { in: 'middle' }, ({ screws = [] }: Design) => screws.at(-1)?.thread.name, 'M2.5'],
    [
      'screw',
      undefined,
      { x: '1 mm', y: '9 mm', pulls: '-90 deg' },
      ({ screws = [] }: Design) => screws.at(-1)?.holdsMount?.at.y_mm,
      9,
    ],
    ['grease point', undefined, { on: 'stop shelf' }, ({ grease = [] }: Design) => grease.at(-1)?.stops, [0]],
  ] as const)('a %s, where it is told to be: %s %j', (kind, about, inputs, found, expected) => {
    const addition = additions(heron, about).find((one) => one.kind === kind)
    const changes = addition?.propose(inputs).value ?? []
    expect(found(readDesign(changeDocument(heron, changes)).value!)).toEqual(expected)
  })

  it('edge states go to a part that has none, and what is masked, racked or edged is asked of the part that is meant', () => {
    expect(additions(heron).map(({ kind }) => kind)).not.toContain('edge states')
    const { outsideEdges: _, outsideEdgesFrom: __, ...bare } = JSON.parse(heron).parts.topLink
    const text = JSON.stringify({ ...JSON.parse(heron), parts: { ...JSON.parse(heron).parts, topLink: bare } })
    const kinds = additions(text, 'topLink').map(({ kind }) => kind)
    // SOURCE hand (the link is not coated)
    expect(['edge states', 'rack point', 'masked face'].map((kind) => kinds.includes(kind as never))).toEqual([
      true,
      false,
      false,
    ])
    const link = readDesign(added(text, 'edge states', { insideEdges: '' })).value!.parts[5]
    expect([link.outsideEdges, link.insideEdges]).toEqual([{ from_mm: -0.1, to_mm: -0.3 }, undefined])
  })

  it('a requirement of a yes-or-no figure asks for yes or no', () => {
    const { requirements } = readDesign(added(heron, 'requirement', { figure: 'motion.collides', value: 'no' })).value!
    expect(requirements.at(-1)?.bound).toEqual({ kind: 'is', value: false })
  })
})

describe('what cannot be added', () => {
  const heron = exampleText('heron')
  const refusal = (kind: Addition['kind'], inputs: Inputs) => additionOf(heron, kind).propose(inputs).problems

  it('says at which ask', () => {
    expect(refusal('link', { to: 'mount.gone' })).toMatchObject([{ code: 'unknown name', place: 'to' }])
    expect(refusal('link', { from: 'mount.mcp', to: 'proximal.mcp' })).toMatchObject([{ code: 'too small', place: 'to' }])
    expect(refusal('pin', { one: 'mount', other: 'mount' })).toMatchObject([{ code: 'wrong value', place: 'other' }])
    expect(refusal('pin', { x: '3' })).toMatchObject([{ code: 'wrong unit', place: 'x' }])
    expect(refusal('stop', { gap: 'wide' })).toMatchObject([{ code: 'unknown name', place: 'gap' }])
    expect(refusal('tension spring', { pull: '1 kN' })).toMatchObject([{ code: 'too large', place: 'pull' }])
    expect(refusal('tension spring', { rate: '0 N/mm' })).toMatchObject([{ code: 'too large', place: 'pull' }])
    expect(refusal('torsion spring', { name: 'return' })).toMatchObject([{ code: 'used twice', place: 'name' }])
    expect(refusal('hole', { part: 'gone' })).toMatchObject([{ code: 'unknown name' }])
  })

  it('is told by the reader of designs where only a typed text is at fault', () => {
    expect(readDesign(added(heron, 'load case', { force: '20 mm' })).problems).toMatchObject([{ code: 'wrong unit' }])
  })

  it('is anything, while the document has problems', () => {
    expect(additions(heron.replace('"6.47 mm"', '"6.47"'))).toEqual([])
    expect(additions('{')).toEqual([])
  })

  it('is a thing for which the design lacks what it takes', () => {
    const few = JSON.parse(heron)
    few.toggles = {}
    few.requirements = {}
    few.parts = { mount: few.parts.mount, proximal: few.parts.proximal }
    few.pins = { mcp: few.pins.mcp }
    few.stops = {}
    few.loadCases = {}
    few.orders = {}
    few.risks = {}
    const { tip: _, use: __, givesWay: ___, ...rest } = few
    const offered = additions(JSON.stringify(rest)).map(({ kind }) => kind)
    expect(offered).not.toContain('toggle')
    expect(offered).toContain('torsion spring')
  })
})
