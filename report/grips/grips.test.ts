import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { changeDocument, evaluate, postureAt, type Question, readDesign } from '../../engine/index.ts'
import { type Grip, gripsOf } from '../index.ts'

const text = readFileSync(join(import.meta.dirname, '../../designs/heron.json'), 'utf8')

function gripsAt(arc_ratio: number, question?: Question): (id: string) => Grip {
  const { value } = readDesign(text, 'heron')
  if (value === undefined) throw new Error('the design was refused')
  const posture = postureAt(evaluate(value), arc_ratio)
  const grips = gripsOf({ design: value, text, posture, ...(question === undefined ? {} : { question }) })
  return (id) => {
    const found = grips.find((grip) => grip.id === id)
    if (found === undefined) throw new Error(`no grip ${id}`)
    return found
  }
}

const open = gripsAt(0)
const from = { x_mm: 0, y_mm: 0 }
const changes = (grip: Grip, to: { x_mm: number; y_mm: number }) => grip.hand?.drag({ from, to }, 'step') ?? []
const values = (grip: Grip, to: { x_mm: number; y_mm: number }) =>
  changes(grip, to).map((change) => [change.place.join('.'), change.kind === 'set' ? change.value : undefined])

describe('a pin', () => {
  it('is dragged by the hole of the part that carries it, in whole steps', () => {
    // SOURCE hand (45.13 mm and 4.33 mm in the file; open, the proximal phalanx lies along x)
    expect(values(open('pin topNear'), { x_mm: 0.52, y_mm: -0.26 })).toEqual([
      ['parts.proximal.holes.top.x', '45.63 mm'],
      ['parts.proximal.holes.top.y', '4.03 mm'],
    ])
    expect(changes(open('pin topNear'), { x_mm: 0.04, y_mm: -0.04 })).toEqual([])
  })

  it('whose place is the name of a dimension is dragged by the dimension, and says so', () => {
    // SOURCE hand (44 mm in the file)
    expect(values(open('pin pip'), { x_mm: 1, y_mm: 0 })).toEqual([['dimensions.proximalLength', '45 mm']])
    expect(open('pin pip').note).toContain('changes proximalLength')
  })

  it('at the origin of its parts cannot be dragged, and says what can', () => {
    expect(open('pin mcp').hand).toBeUndefined()
    expect(open('pin mcp').note).toContain('origin')
  })

  it('moves as the hand does, however its part is turned', () => {
    const closed = gripsAt(1)
    const drag = {
      from: closed('pin topNear').at,
      to: { x_mm: closed('pin topNear').at.x_mm, y_mm: closed('pin topNear').at.y_mm + 1 },
    }
    const after = changeDocument(text, closed('pin topNear').hand?.drag(drag, 'fine') ?? [])
    const { x, y } = JSON.parse(after).parts.proximal.holes.top
    // SOURCE property: a turn changes no length; rounding to 0.01 mm changes each coordinate by at most half of that
    expect(Math.hypot(Number.parseFloat(x) - 45.13, Number.parseFloat(y) - 4.33)).toBeCloseTo(1, 2)
    // SOURCE hand (closed, the proximal phalanx points down: what goes up in the drawing goes back along its x)
    expect(Number.parseFloat(x)).toBeLessThan(45.13 - 0.9)
  })
})

it('a link is dragged along itself by its far hole', () => {
  // SOURCE hand (42.108 mm in the file)
  const [[place, value]] = values(open('link baseLink'), { x_mm: 0.5, y_mm: 0 })
  expect([place, value]).toEqual(['dimensions.baseLinkLength.value', '42.608 mm'])
})

it('ends of a stop’s edge and pads are dragged where they stand', () => {
  expect(
    changes(open('edge middle.shelf from'), { x_mm: 0.2, y_mm: 0.2 }).map(({ place }) => place.slice(0, -1).join('.')),
  ).toEqual(['parts.middle.edges.shelf.from', 'parts.middle.edges.shelf.from'])
  expect(open('edge middle.shelf from').rows.map(({ id }) => id)).toEqual(['parts.middle.edges.shelf', 'stops.shelf'])
  // SOURCE hand (24 mm, −6.5 mm in the file)
  expect(values(open('pad proximal.grip'), { x_mm: 0.1, y_mm: -0.1 })).toEqual([
    ['parts.proximal.pads.grip.0', '24.1 mm'],
    ['parts.proximal.pads.grip.1', '-6.6 mm'],
  ])
})

it('a load’s direction is turned about its pad, and only while that load is shown', () => {
  const grip = gripsAt(0, { kind: 'close', loadCase: 'proximalGrip' })('force proximalGrip 0')
  const below = { x_mm: grip.at.x_mm, y_mm: grip.at.y_mm - 10 }
  const aside = { x_mm: grip.at.x_mm + 10, y_mm: grip.at.y_mm }
  // SOURCE hand (90° in the file; a quarter turn counter-clockwise from below to the right)
  expect(grip.hand?.drag({ from: below, to: aside }, 'step')).toEqual([
    { kind: 'set', place: ['loadCases', 'proximalGrip', 'forces', 0, 'direction'], value: '180 deg' },
  ])
  // SOURCE hand (one degree a step, a tenth when fine)
  expect(grip.hand?.nudge([-1, 0], 'step')).toMatchObject([{ value: '91 deg' }])
  expect(grip.hand?.nudge([0, -1], 'fine')).toMatchObject([{ value: '89.9 deg' }])
  expect(() => open('force proximalGrip 0')).toThrow()
})
