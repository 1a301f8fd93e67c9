import { expect, it } from 'vitest'
import { fixedText } from './fixed-text.ts'

it.each([
  [-0.04, 1, '0.0'],
  [-0.06, 1, '−0.1'],
  [0, 1, '0.0'],
  [12.347, 2, '12.35'],
  [-3, 0, '−3'],
])('%d with %d digits reads %s', (value, digits, text) => {
  // SOURCE hand (rounded; nothing has no sign)
  expect(fixedText(value, digits)).toBe(text)
})
