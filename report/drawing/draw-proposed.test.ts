import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { additions, changeDocument, type Design, evaluate, postureAt, readDesign } from '../../engine/index.ts'
import { drawMarked, drawProposed, layoutSheet, standingPlaces, svgText } from '../index.ts'

const text = readFileSync(join(import.meta.dirname, '../../designs/heron.json'), 'utf8')

function read(written: string): Design {
  const { value } = readDesign(written, 'heron')
  if (value === undefined) throw new Error('the design was refused')
  return value
}

const design = read(text)
const evaluation = evaluate(design)
const posture = postureAt(evaluation, 1)
const sheet = layoutSheet({ design, travel: evaluation.travel!, width_px: 960 })
const drawn = (proposed: Design) => svgText(drawProposed({ design, posture, sheet, proposed }))
const shapes = (svg: string) => svg.match(/<(path|circle|line|polygon)/g)?.length ?? 0

describe('what would be added', () => {
  it.each(['part', 'link', 'pin', 'hole', 'pad', 'stop', 'torsion spring', 'tension spring', 'load case'])(
    'is drawn: a %s',
    (kind) => {
      const addition = additions(text).find((one) => one.kind === kind)
      if (addition === undefined) return expect(kind).toBe('pin')
      const { value: changes } = addition.propose({})
      const proposed = read(changeDocument(text, changes ?? []))
      const svg = drawn(proposed)
      expect(shapes(svg)).toBeGreaterThan(0)
      expect(svg).not.toMatch(/NaN|undefined/)
    },
  )

  it.each([
    ['rack point', 'mount', {}],
    ['masked face', 'mount', { face: 'holes.mcp' }],
    ['masked face', 'middle', { face: 'outline' }],
    ['screw', undefined, { x: '1 mm', y: '-7 mm', pulls: '-90 deg' }],
    ['grease point', undefined, {}],
  ])('is drawn by a mark where it has no body: a %s of %s', (kind, about, inputs) => {
    const changes =
      additions(text, about)
        .find((one) => one.kind === kind)
        ?.propose(inputs).value ?? []
    // SOURCE hand (one ring, one line or one outline each)
    expect(shapes(drawn(read(changeDocument(text, changes))))).toBe(1)
  })

  it('is nothing where the two designs are one', () => {
    expect(shapes(drawn(design))).toBe(0)
  })

  it('stands where its pins are: a new link reaches from hole to hole', () => {
    const link = additions(text).find(({ kind }) => kind === 'link')!
    const changes = link.propose({ from: 'mount.base', to: 'distal.top' }).value ?? []
    const proposed = read(changeDocument(text, changes))
    const svg = drawn(proposed)
    const [first] = svg.match(/ d="[^"]*"/) ?? ['']
    const xs = [...first.matchAll(/[ML]([\d.-]+) /g)].map((match) => Number(match[1]))
    const pins = ['baseNear', 'topFar'].map((id) => posture.pinsAt[design.pins.findIndex((pin) => pin.id === id)].x_mm)
    const ends = pins.map((x_mm) => sheet.view.origin.x + sheet.view.scale_px_mm * x_mm)
    // SOURCE property: the outline goes a little beyond both pins
    expect(Math.min(...xs)).toBeLessThan(Math.min(...ends))
    expect(Math.max(...xs)).toBeGreaterThan(Math.max(...ends) - 1)
  })
})

describe('what is looked at', () => {
  const places = (row: string) => standingPlaces({ design, posture }, row.split('.'))

  it('is ringed where it stands', () => {
    expect(places('pins.mcp').points).toEqual([posture.pinsAt[0]])
    // SOURCE hand (the ends of the shelf; the three pins of the toggle; the corner of an outline; one force of a load)
    expect(places('parts.middle.edges.shelf').points).toHaveLength(2)
    expect(places('toggles.distal').points).toHaveLength(3)
    expect(places('parts.mount.outline.3').points).toHaveLength(1)
    expect(places('loadCases.carry.forces.0').points).toHaveLength(1)
    expect(places('parts.distal')).toEqual({ points: [], parts: [3] })
  })

  it('is nothing for what stands nowhere', () => {
    for (const row of ['dimensions.proximalLength', 'parts.none', 'pins.none', 'friction.any', '']) {
      expect(drawMarked({ design, posture, sheet, row: row.split('.') })).toBeUndefined()
    }
  })
})
