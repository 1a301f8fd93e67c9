import { expect, it } from 'vitest'
import { compare, rateLines } from './compare.ts'

it('sets rates beside their ratio to the first', () => {
  const lines = rateLines([
    { name: 'plain', time_ms: 2 },
    { name: 'second way', time_ms: 5 },
  ])
  // SOURCE hand (5 / 2 = 2.5)
  expect(lines).toEqual(['plain           2.000 ms         1 ×', 'second way      5.000 ms       2.5 ×'])
})

it('does not accept work that gives nothing back', () => {
  expect(() => compare([{ name: 'nothing', run: () => undefined }])).toThrow('gave nothing back')
})
