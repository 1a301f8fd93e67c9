import { expect, it } from 'vitest'
import { closingsOver } from './closings.ts'

it('a life has the closings of its days', () => {
  expect(closingsOver({ closingsPerDay: 300, years: 2 })).toBe(219_000) // SOURCE hand (300 × 365 × 2)
})
