// SOURCE standard RFC 4180 (quotation marks, line ends), from memory; what is no part of it: SOURCE hand
import { describe, expect, it } from 'vitest'
import { limits } from '../../engine/index.ts'
import { withGuard } from './formula-guard.ts'
import { fileRows, tableRows } from './table-rows.ts'

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text)

describe('a table', () => {
  it.each([
    [
      'commas',
      'a,b\n1,2',
      [
        ['a', 'b'],
        ['1', '2'],
      ],
    ],
    [
      'semicolons, with decimal commas',
      'a;b\r\n24,507;2\r\n',
      [
        ['a', 'b'],
        ['24,507', '2'],
      ],
    ],
    [
      'tabs, as from a spreadsheet',
      'a\tb\n1,5\t2;3',
      [
        ['a', 'b'],
        ['1,5', '2;3'],
      ],
    ],
    [
      'a byte order mark',
      '\ufeffa,b\n1,2',
      [
        ['a', 'b'],
        ['1', '2'],
      ],
    ],
    [
      'quotation marks',
      '"a;x",b\n"1 ""2""\n3",4',
      [
        ['a;x', 'b'],
        ['1 "2"\n3', '4'],
      ],
    ],
    [
      'an inch mark',
      'a,b\n0.118",2',
      [
        ['a', 'b'],
        ['0.118"', '2'],
      ],
    ],
    ['rows of other lengths', 'a,b\n1\n\n1,2,3', [['a', 'b'], ['1'], [''], ['1', '2', '3']]],
    [
      'formulas, which stay text',
      'a,b\n=1+1,@x',
      [
        ['a', 'b'],
        ['=1+1', '@x'],
      ],
    ],
    [
      'formulas with an apostrophe before them',
      "a,b\n'=1+1,'x",
      [
        ['a', 'b'],
        ['=1+1', "'x"],
      ],
    ],
    ['nothing', '', []],
  ])('is read with %s', (_what, text, rows) => {
    expect(fileRows(bytes(text)).value).toEqual(rows)
  })

  it.each([
    ['an open quotation mark', 'a,b\n1,2\n"3,4', 'row 3'],
    ['too many columns', `a,b\n${','.repeat(limits.tableColumns)}`, 'row 2'],
    ['a cell that goes on and on', `a\n${'x'.repeat(limits.tableCell + 1)}`, 'row 2'],
    ['too many rows', 'a\n'.repeat(limits.tableRows + 2), ''],
  ])('is refused with %s', (_what, text, place) => {
    expect(tableRows(text).problems).toMatchObject([{ place }])
  })

  it('is refused by its length before it is read, and in another writing than UTF-8', () => {
    expect(fileRows(new Uint8Array(limits.tableBytes + 1)).problems).toMatchObject([{ code: 'file too long' }])
    expect(tableRows('a'.repeat(limits.tableBytes + 1)).problems).toMatchObject([{ code: 'file too long' }])
    expect(fileRows(new Uint8Array([0x4d, 0x61, 0xdf])).problems).toMatchObject([{ code: 'not utf-8' }])
  })
})

it('a cell on its way out is no formula, and numbers stay numbers', () => {
  const cells = ['=1+1', '+49', '-0.003', '-0.003 mm', '@x', "'=x", "'x", '+1e-3', 'a-b', '']
  expect(cells.map(withGuard)).toEqual(["'=1+1", '+49', '-0.003', "'-0.003 mm", "'@x", "''=x", "'x", '+1e-3', 'a-b', ''])
})
