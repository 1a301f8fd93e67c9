import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { isDeepStrictEqual } from 'node:util'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { changeDocument } from './change-document.ts'
import { changedValues } from './changed-values.ts'

const heron = readFileSync(join(import.meta.dirname, '../../../designs/heron.json'), 'utf8')
const { document } = fc.letrec((tie) => ({
  document: fc.oneof(
    { maxDepth: 3 },
    fc.constantFrom<unknown>(null, true, 0, 1, 'a', 'b'),
    fc.array(tie('document'), { maxLength: 2 }),
    fc.dictionary(fc.constantFrom('a', 'b'), tie('document'), { noNullPrototype: true }),
  ),
}))
const compare = (before: unknown, after: unknown) => changedValues(JSON.stringify(before), JSON.stringify(after))

describe('two documents', () => {
  it('differ in the values that were changed, and in no other', () => {
    const title = { place: ['title'], before: JSON.parse(heron).title, after: 'other' }
    expect(changedValues(heron, changeDocument(heron, [{ kind: 'set', place: ['title'], value: 'other' }]))).toEqual([title])
  })

  it('do not differ by layout and order of keys', () => {
    expect(changedValues('{"a":1,"b":[2,{"c":3}]}', '{ "b": [ 2, { "c": 3 } ],\n "a": 1.0 }')).toEqual([])
  })

  it('differ in the whole of a thing that only one of them has', () => {
    expect(compare({ pins: { a: { x: 1 } } }, { pins: { b: { x: 1 } } })).toEqual([
      { place: ['pins', 'b'], before: undefined, after: { x: 1 } },
      { place: ['pins', 'a'], before: { x: 1 }, after: undefined },
    ])
    expect(compare({ list: [1, 2] }, { list: [1] })).toEqual([{ place: ['list', 1], before: 2, after: undefined }])
  })

  it('differ where one has a list and the other an object or a word', () => {
    expect(compare({ a: [] }, { a: {} })).toEqual([{ place: ['a'], before: [], after: {} }])
    expect(compare({ a: { b: 1 } }, { a: 'b' })).toEqual([{ place: ['a'], before: { b: 1 }, after: 'b' }])
  })

  it('of any kind differ in nothing exactly when they are equal', () => {
    // SOURCE other-method (Node's own comparison of two values)
    fc.assert(
      fc.property(document, document, (one, other) => {
        expect(compare(one, one)).toEqual([])
        expect(compare(one, other).length === 0).toBe(isDeepStrictEqual(one, other))
      }),
      { seed: 5_031, numRuns: 500 },
    )
  })
})
