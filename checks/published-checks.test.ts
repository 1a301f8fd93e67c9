import { expect, it } from 'vitest'
import { otherOrigins, publishedChecks } from './published-checks.ts'
import { projectFiles } from './source-file.ts'

const files = projectFiles()

/** Counts are told as “more than so many hundred”, so that not every new test asks for a new list. */
const TOLD_IN = 100

it('the list of published checks that the program tells is that of its tests (kept by: npx vitest run --project house -u)', async () => {
  const others = Object.entries(otherOrigins(files)).map(([sort, count]) => [sort, TOLD_IN * Math.floor(count / TOLD_IN)])
  const told = { checks: publishedChecks(files), moreThan: Object.fromEntries(others) }
  await expect(`${JSON.stringify(told, null, 2)}\n`).toMatchFileSnapshot('../report/proving/published-checks.json')
})

it('an origin is taken apart into what is stated, where it is from and how it is known', () => {
  const test = (origin: string) => ({
    path: 'engine/springs/rate.test.ts',
    text: `it('is a rate', () => {\n  // SOURCE ${origin}\n})\n`,
  })
  const of = (origin: string) => publishedChecks([test(origin)]).map(({ source, known }) => [source, known])
  // SOURCE hand: what is written into the test
  expect(publishedChecks([test('book (Somebody, ex. 3, from memory: 4 N)')])).toEqual([
    { subject: 'springs', states: 'is a rate', source: 'Somebody, ex. 3: 4 N', known: 'from memory' },
  ])
  expect(of('standard ISO 1, table 1, read')).toEqual([['ISO 1, table 1', 'read']])
  expect(of('book (X, p. 1, by a notebook that quotes it: 3)')[0][1]).toBe('read as quoted elsewhere')
  expect(of('standard: ISO 1, m read, f from memory')[0][1]).toBe('read in part')
  // What nobody says to have read is recalled.
  expect(of('standard: ISO 1')[0][1]).toBe('from memory')
  expect(of('hand: 2 + 2')).toEqual([])
  expect(otherOrigins([test('hand: 2 + 2')]).hand).toBe(1)
})
