import { describe, expect, it } from 'vitest'
import type { Characteristic } from '../../engine/index.ts'
import { checkSentence } from './check-sentence.ts'
import { conformityText, foundText, planRows } from './plan-rows.ts'
import { readReadings } from './read-readings.ts'

const size: Characteristic = {
  number: 1,
  id: 'dimensions.pin',
  words: 'dimension pin',
  kind: 'size',
  unit: 'mm',
  nominal: 3,
  least: 2.994,
  most: 3,
  piece: { kind: 'pin', id: 'pin', title: 'Pin pin' },
  sources: [0],
}
const zone = { x_mm: 26, y_mm: 0, zone_mm: 0.02 }
const place: Characteristic = {
  ...size,
  number: 2,
  id: 'parts.a.holes.b.position',
  kind: 'position',
  place: zone,
  sources: [1, 2],
}
const plan = [size, place]
const HEADING = ['serial', 'characteristic', 'found', 'x', 'y', 'uncertainty', 'visit']
const read = (...rows: readonly (readonly string[])[]) => readReadings([HEADING, ...rows], plan)

it('a distance of holes is typed as it was taken, over two pins or between them', () => {
  const found = (typed: string, characteristic = '1') =>
    read(['A', characteristic, typed, '', '', '0.002', '']).sets?.[0].readings[0]
  // SOURCE hand: 6.998 − (3.002 + 4.998)/2 = 2.998; 0.996 and 0.998 + (2 + 2)/2 = 2.996 to 2.998; 2.54 − (1 + 1)/2 = 1.54; each ± 0.002
  expect(found('6.998 over 3.002 and 4.998')).toMatchObject({
    size: { least: expect.closeTo(2.996, 9), most: expect.closeTo(3, 9) },
  })
  expect(found('0.996 to 0.998 between 2 and 2 mm')).toMatchObject({
    size: { least: expect.closeTo(2.994, 9), most: expect.closeTo(3, 9) },
  })
  expect(found('0.1 in over 1 and 1')).toMatchObject({ size: { least: expect.closeTo(1.538, 9) } })
  expect(read(['A', '1', '7 over 3', '', '', '', ''])).toMatchObject({ problems: [{ place: 'row 2, found' }] })
  const diameter = { ...size, id: 'pins.a.diameter', diameter: 'pins.a' }
  expect(readReadings([HEADING, ['A', '1', '7 over 3 and 5']], [diameter])).toMatchObject({
    problems: [{ needed: 'a size: only a distance is taken over pins' }],
  })
})

describe('a table of readings', () => {
  it('gives each set its readings, in mm where no unit is typed', () => {
    const { sets } = read(
      ['A', '1', '2.997', '', '', '0.001'],
      ['B', 'dimensions.pin', '0.118 in'],
      ['A', '2', '', '26.004', '-0.003'],
    )
    // SOURCE hand: 0.118 in are 2.9972 mm
    expect(sets?.map(({ serial, readings }) => [serial, readings.length])).toEqual([
      ['A', 2],
      ['B', 1],
    ])
    expect(sets?.[0].readings[0]).toMatchObject({ size: { least: expect.closeTo(2.996, 12), most: expect.closeTo(2.998, 12) } })
    expect(sets?.[0].readings[1]).toMatchObject({ at: { x_mm: 26.004, y_mm: -0.003 }, uncertainty_mm: 0 })
    expect(sets?.[1].readings[0]).toMatchObject({ size: { least: expect.closeTo(2.9972, 9) } })
  })

  it('takes columns in any order, tells those it passes over, and needs no empty row', () => {
    const rows = [['note', 'found', 'Characteristic', 'SERIAL'], [''], ['=1+1', '2.995 to 2.999', '1', 'A']]
    // SOURCE hand
    expect(readReadings(rows, plan)).toMatchObject({ passedOver: ['note'], sets: [{ serial: 'A' }] })
  })

  it.each([
    // SOURCE hand: one fault each, by row and column
    [['', '1', '3'], 'row 2, serial', 'the serial number'],
    [['A', '3', '3'], 'row 2, characteristic', 'from 1 to 2'],
    [['A', '1', ''], 'row 2, found', 'what was read'],
    [['A', '1', '3 N'], 'row 2, found', 'a length'],
    [['A', '1', '3,01'], 'row 2, found', 'an operator'],
    [['A', '1', '3.01 to 3.00'], 'row 2, found', 'the smaller size first'],
    [['A', '1', '1 to 2 to 3'], 'row 2, found', 'two with to between'],
    [['A', '1', '3', '', '', '-1'], 'row 2, uncertainty', 'nothing below 0'],
    [['A', '1', '3', '', '', '', 'before coating'], 'row 2, visit', 'not coated'],
    [['A', '2', '3'], 'row 2, x', 'what was read'],
    [['A', '1', '1e999'], 'row 2, found', ''],
  ])('refuses %j', (row, at, needed) => {
    const { problems } = read(row) as { problems: readonly { place: string; needed: string }[] }
    expect(problems[0].place).toBe(at)
    expect(problems[0].needed).toContain(needed)
  })

  it('takes over nothing where one row is at fault, and nothing twice', () => {
    // SOURCE property
    expect(read(['A', '1', '3'], ['A', '1', '3.001']).sets).toBeUndefined()
    expect(readReadings([], plan).sets).toBeUndefined()
    expect(readReadings([['serial', 'found']], plan).sets).toBeUndefined()
    expect(read().sets).toBeUndefined()
  })
})

describe('what is printed', () => {
  it('shows sizes without zeros that nobody read', () => {
    // SOURCE hand
    expect(planRows(plan).map(({ drawn, allowed }) => [drawn, allowed])).toEqual([
      ['3 mm', '2.994 to 3 mm'],
      ['x 26, y 0 mm', '⌀ 0.02 mm about it'],
    ])
    expect(foundText({ characteristic: size, size: { least: 2.9945, most: 2.9945 } })).toBe('2.9945 mm')
    expect(foundText({ characteristic: place, at: { x_mm: 26.004, y_mm: -0.003 }, uncertainty_mm: 0 })).toBe(
      'x 26.004, y −0.003 mm',
    )
    expect(conformityText('outside')).toBe('▼ outside')
  })

  it('counts the readings and says why nothing can be built', () => {
    const problem = { code: 'too small', place: 'pins.mcp', found: 'pin in hole', needed: 'room' }
    const words = checkSentence({
      serial: 'A',
      conformities: ['within', 'outside', 'within'],
      unmeasured_count: 1,
      readings: [],
      problems: [problem, problem],
    })
    // SOURCE hand
    expect(words).toBe(
      'Set A: 2 readings are within the limits, 1 reading is outside of them; 1 of the plan were not measured and count as drawn. Built of what was measured: no finger can be built of it: pins.mcp: pin in hole. Needed: room. And 1 more.',
    )
  })
})
