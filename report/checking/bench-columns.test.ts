// SOURCE hand (headings as shops write them, told apart by eye)
import { describe, expect, it } from 'vitest'
import { guessColumns, guessDecimal } from './bench-columns.ts'
import { readBenchTable } from './bench-table.ts'
import { farOutsideRows } from './far-outside.ts'
import { plan } from './test-support/small-plan.ts'

const read = (rows: readonly (readonly string[])[], decimal: 'point' | 'comma' = 'point') =>
  readBenchTable({ rows, named: guessColumns(rows[0]), decimal }, { plan, gauges: [] })

describe('columns are guessed', () => {
  it.each([
    [
      ['Serial No.', 'No.', 'Measured', 'Measured by', 'Date'],
      { serial: 'Serial No.', characteristic: 'No.', found: 'Measured', by: 'Measured by', date: 'Date' },
    ],
    [
      ['serial', 'characteristic', 'number', 'found', 'value'],
      { serial: 'serial', characteristic: 'characteristic', found: 'found' },
    ],
    [['set', 'item', 'Reading', 'UNIT'], { serial: 'set', characteristic: 'item', found: 'Reading', unit: 'UNIT' }],
    [['found', 'reading'], { found: 'found', reading: 'reading' }],
    [['a', '', 'constructor'], {}],
  ])('from %j', (heading, named) => {
    expect(guessColumns(heading)).toEqual(named)
  })

  it('and so is the decimal sign, where only one of them stands among the sizes', () => {
    const decimal = (...found: readonly string[]) =>
      guessDecimal([['note', 'found'], ...found.map((cell) => ['1,5', cell])], { found: 'found' })
    expect([decimal('3,01', '3'), decimal('3,01', '2.99'), decimal('3'), decimal()]).toEqual(['comma', 'point', 'point', 'point'])
  })
})

describe('a row with more columns', () => {
  const heading = ['serial', 'characteristic', 'found', 'unit', 'by', 'date', 'reading', 'corrects', 'reason']

  it('says in which unit, who measured and when, and is corrected by its number further down', () => {
    const { rows, problems } = read([
      heading,
      ['A', '1', '0.118', 'in', 'K2', '2031-04-05', '7'],
      ['A', '1', '2.996 to 2.998', 'mm', '', '', '8', '7', 'in millimetres'],
    ])
    expect(problems).toEqual([])
    // SOURCE hand: 0.118 in are 2.9972 mm
    expect(rows[0]).toMatchObject({ typed: { found: '0.118 in' }, by: 'K2', date: '2031-04-05', number: 7 })
    expect(rows[0].reading).toMatchObject({ size: { least: expect.closeTo(2.9972, 9) } })
    expect(rows[1]).toMatchObject({ typed: { found: '2.996 mm to 2.998 mm' }, corrects: 7, reason: 'in millimetres' })
  })

  it.each([
    ['another unit beside the number', ['A', '1', '3 mm', 'in'], 'row 2, unit'],
    ['a unit of something else', ['A', '1', '3', 'N'], 'row 2, found'],
    ['a day in another order', ['A', '1', '3', '', '', '05.04.2031'], 'row 2, date'],
    ['a day that is none', ['A', '1', '3', '', '', '2031-02-30'], 'row 2, date'],
    ['a number that is none', ['A', '1', '3', '', '', '', 'seven'], 'row 2, reading'],
  ])('is refused with %s', (_what, row, place) => {
    expect(read([heading, row]).problems).toMatchObject([{ place }])
  })

  it('is refused with a number or heading that stands twice', () => {
    const row = ['A', '1', '3', '', '', '', '7']
    expect(read([heading, row, row]).problems).toMatchObject([{ place: 'row 3, reading' }])
    expect(read([['serial', 'characteristic', 'found', 'found'], row]).problems).toMatchObject([{ place: 'row 1' }])
  })
})

it('readings far outside are asked about by their rows', () => {
  const { rows } = read([
    ['serial', 'characteristic', 'found'],
    ['A', '1', '30'],
    ['A', '1', '2.98'],
  ])
  // SOURCE hand: 27 mm past the limit, and 14 µm, with a tolerance of 6 µm
  expect(farOutsideRows(rows)).toEqual(['row 2, A, no. 1 dimension pin: 30 mm is far outside of what the drawing allows'])
})
