import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { applySplice, inverseSplice, spliceBetween } from './splice.ts'

/** Texts that share much: a common text with a piece put in. */
const pairs = fc
  .tuple(
    fc.string({ unit: 'binary' }),
    fc.string({ unit: 'binary' }),
    fc.string({ unit: 'binary' }),
    fc.string({ unit: 'binary' }),
  )
  .map(([head, one, other, tail]) => [head + one + tail, head + other + tail] as const)

describe('the splice between any two texts', () => {
  it('turns the one into the other, and its inverse turns it back', () => {
    // SOURCE property (undo and redo are each other’s inverse)
    fc.assert(
      fc.property(pairs, ([before, after]) => {
        const splice = spliceBetween(before, after)
        expect(applySplice(before, splice)).toBe(after)
        expect(applySplice(after, inverseSplice(splice))).toBe(before)
        expect(inverseSplice(inverseSplice(splice))).toEqual(splice)
      }),
    )
  })

  it('never parts the halves of a character', () => {
    // SOURCE property (a text of whole characters is cut into texts of whole characters)
    fc.assert(
      fc.property(pairs, ([before, after]) => {
        const { removed, inserted } = spliceBetween(before, after)
        expect(removed).not.toMatch(/\p{Cs}/u)
        expect(inserted).not.toMatch(/\p{Cs}/u)
      }),
    )
  })

  it('is empty between equal texts', () => {
    // SOURCE property (nothing changed)
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        const { removed, inserted } = spliceBetween(text, text)
        expect(removed + inserted).toBe('')
      }),
    )
  })
})

describe('a splice', () => {
  it('keeps apart two faces that share their first half', () => {
    // SOURCE hand (😀 is d83d de00, 😁 is d83d de01: the common first half stays with its character)
    expect(spliceBetween('a😀b', 'a😁b')).toEqual({ at: 1, removed: '😀', inserted: '😁' })
  })

  it('made for another text is not applied', () => {
    expect(() => applySplice('"x": "3 mm"', { at: 6, removed: '4 mm', inserted: '5 mm' })).toThrow('another text')
    expect(() => applySplice('abc', { at: 9, removed: '', inserted: 'd' })).toThrow('another text')
  })
})
