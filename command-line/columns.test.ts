import { expect, it } from 'vitest'
import { joined } from '../report/index.ts'
import { aligned, wrapped } from './columns.ts'

it('text is broken between words within a hundred columns, the indent included', () => {
  const text = Array.from({ length: 60 }, () => 'word').join(' ')
  const lines = wrapped(text, '    ').split('\n')
  expect(lines.length).toBeGreaterThan(1)
  expect(lines.filter((line) => line.length > 100 || !line.startsWith('    word'))).toEqual([]) // SOURCE hand (100 is the width stated in columns.ts)
  expect(wrapped(text).split('\n').join(' ')).toBe(text)
})

it('a number in groups of three stays on one line, and can be searched for as it is typed', () => {
  const text = `${'x'.repeat(96)} 28\u00a0700 closings`
  expect(wrapped(text)).toBe(`${'x'.repeat(96)}\n28 700 closings`)
})

it('a word longer than a line stands alone and whole', () => {
  const long = 'x'.repeat(120)
  expect(wrapped(`a ${long} b`)).toBe(`a\n${long}\nb`)
})

it('numbers line up on the right, words on the left, and long cells go on below', () => {
  const cell = (text: string) => ({ text, side: 'left' as const, most_columns: 10 })
  const number = (text: string) => ({ text, side: 'right' as const })
  const rows = [
    [cell('a short'), number('12.5')],
    [cell('a longer title'), number('8.72')],
  ]
  expect(aligned(rows)).toEqual(['  a short   12.5', '  a longer  8.72\n  title'])
  expect(aligned([])).toEqual([])
})

it('a degree sign stands at its number, other units a space apart', () => {
  expect(joined({ number: '8.7', unit: '°' })).toBe('8.7°')
  expect(joined({ number: '12', unit: 'N' })).toBe('12 N')
  expect(joined({ number: 'yes', unit: '' })).toBe('yes')
})
