import { describe, expect, it } from 'vitest'
import { nearestName } from './nearest.ts'
import { powersText } from './powers.ts'
import { hasUnprintable, quoted } from './quote.ts'

describe('the name that was most likely meant', () => {
  const known = ['proximalLength', 'pinDiameter', 'mcp', 'pip', 'dip']
  const rows: readonly [string, string | undefined][] = [
    ['proximalLenght', 'proximalLength'],
    ['ProximalLength', 'proximalLength'],
    ['pinDiam', undefined],
    ['pinDiametr', 'pinDiameter'],
    ['mpc', undefined],
    ['mcpp', 'mcp'],
    ['x', undefined],
    ['', undefined],
    ['p'.repeat(10_000), undefined],
  ]
  it.each(rows)('%s', (typed, meant) => {
    expect(nearestName(typed, known)).toBe(meant)
  })

  it('is the nearer of two', () => {
    expect(nearestName('linkTops', ['linkTip', 'linkTop'])).toBe('linkTop')
  })
})

describe('typed text in a message', () => {
  it('stands in quotation marks, shortened', () => {
    expect(quoted('3 mm')).toBe('“3 mm”')
    expect([...quoted('x'.repeat(500))].length).toBeLessThan(70) // SOURCE hand (60 letters, dots and marks)
  })

  it('shows what a terminal would obey', () => {
    expect(quoted('a\u001b[31m\u202e\u0000')).toBe('“a\\u001b[31m\\u202e\\u0000”')
    expect(quoted('\ud800')).toBe('“\\ud800”')
  })

  it('is told apart from text that needs no care', () => {
    expect(hasUnprintable('Mount plate, 7° – “ä” 手')).toBe(false)
    for (const text of ['a\u0007', 'a\u0085', 'a\u200b', 'a\u202e', 'a\u2066', 'a\ufeff', 'a\nb'])
      expect(hasUnprintable(text)).toBe(true)
  })
})

it('writes what a quantity measures in base units', () => {
  expect(powersText({ length: 0, force: 0, time: 0, angle: 0 })).toBe('1')
  expect(powersText({ length: 1, force: 1, time: 0, angle: -1 })).toBe('N·mm/rad')
  expect(powersText({ length: -2, force: 1, time: 0, angle: 0 })).toBe('N/mm^2')
  expect(powersText({ length: 0.5, force: 0, time: 0, angle: 0 })).toBe('mm^0.5')
  expect(powersText({ length: 0, force: 0, time: -2, angle: 0 })).toBe('1/s^2')
})
