import { expect, it } from 'vitest'
import { linesApart } from '../index.ts'

it('shows the lines in which two texts differ, whole', () => {
  expect(linesApart('{\n  "a": 1,\n  "b": 2\n}', '{\n  "a": 3,\n  "b": 2\n}')).toEqual(['  "a": 1,', '  "a": 3,'])
  expect(linesApart('same', 'same')).toEqual(['', ''])
  expect(linesApart('a', '')).toEqual(['a', ''])
})
