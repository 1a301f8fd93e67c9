import { expect, it } from 'vitest'
import { localRules } from './model-limits.ts'
import { orientation } from './orientation.ts'

it('every fact on rules has a date and a source, and what decides beside them is said', () => {
  const undated = orientation.filter(({ date, source }) => !/\b(19|20)\d\d\b/.test(date) || source.trim() === '')
  expect(undated).toEqual([])
  expect(localRules).toMatch(/law and the codes where the wearer lives.*licensed prosthetists/)
})
