import { expect, it } from 'vitest'
import { changeDocument } from './change-document.ts'
import { putBack } from './put-back.ts'

const text = (document: object): string => JSON.stringify(document)
const before = { a: 1, b: { c: '2 mm' }, gone: true }
const after = { a: 1, b: { c: '3 mm', d: 'new' } }

const given = (now: object): unknown =>
  JSON.parse(changeDocument(text(now), putBack(text(now), { before: text(before), after: text(after) })))

it('gives back what a step changed, added and took away', () => {
  expect(given(after)).toEqual(before)
})

// SOURCE property: what was not part of the step is as it stands now
it('leaves what was done since', () => {
  expect(given({ ...after, a: 9, later: 'x' })).toEqual({ ...before, a: 9, later: 'x' })
})

it('gives back a value that was changed again since', () => {
  expect(given({ ...after, b: { c: '4 mm', d: 'new' } })).toEqual(before)
})

it('passes over values whose owner is gone', () => {
  expect(given({ a: 1 })).toEqual({ a: 1, gone: true })
})
