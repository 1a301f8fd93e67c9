import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Change } from './change.ts'
import { changeDocument } from './change-document.ts'
import { documentDifferences } from './document-differences.ts'
import { editSheet } from './edit-sheet.ts'
import { typedChange } from './read-field.ts'
import { removalOf } from './removal.ts'
import { exampleText, exampleTexts } from './test-support/example-texts.ts'
import { thingsOf } from './test-support/things-of.ts'
import { valueAt } from './value-at.ts'

const heron = exampleText('heron')
const examples = fc.constantFrom(...exampleTexts.values())
const fieldsOf = (text: string) => editSheet(text).sections.flatMap(({ rows }) => rows.flatMap(({ fields }) => fields))
const typedTexts = fc.constantFrom(
  '3.25 mm',
  '1/4 in',
  '7 deg',
  '10 lbf',
  'proximalLength - 1 mm',
  '0.5',
  'other words',
  'no such',
)

/** An example and the same with some of its fields typed anew and things removed that nobody needs. */
const pairs = fc
  .tuple(examples, fc.array(fc.tuple(fc.nat(), typedTexts), { maxLength: 5 }), fc.array(fc.nat(), { maxLength: 2 }))
  .map(([before, typings, removals]) => {
    const typed = typings.reduce((text, [pick, words]) => {
      const fields = fieldsOf(text)
      return changeDocument(text, [typedChange(text, fields[pick % fields.length].place, words)])
    }, before)
    const after = removals.reduce((text, pick) => {
      const things = thingsOf(JSON.parse(text))
      const removal = removalOf(text, things[pick % things.length])
      return removal.changes === undefined ? text : changeDocument(text, removal.changes)
    }, typed)
    return { before, after }
  })

/** Sets what is there, and takes away what is gone from the back to the front, so that no number of a list shifts. */
function asChanges({ before, after }: { readonly before: string; readonly after: string }): readonly Change[] {
  const differences = documentDifferences(before, after)
  const later = JSON.parse(after)
  const sets = differences.flatMap(({ place, after: is }): Change[] => {
    const value = valueAt(later, place)
    return is === undefined || value === undefined ? [] : [{ kind: 'set', place, value }]
  })
  const gone = differences.filter(({ after: is }) => is === undefined).reverse()
  return [...sets, ...gone.map(({ place }): Change => ({ kind: 'remove', place }))]
}

describe('the differences of two documents', () => {
  it('lead from the one to the other when they are made', () => {
    // SOURCE property (nothing is left out and nothing is named that does not differ)
    fc.assert(
      fc.property(pairs, ({ before, after }) => {
        const made = changeDocument(before, asChanges({ before, after }))
        expect(JSON.parse(made)).toEqual(JSON.parse(after))
        expect(documentDifferences(made, after)).toEqual([])
      }),
      { seed: 41, numRuns: 12 },
    )
  })

  it('seen from the other side have before and after changed places', () => {
    // SOURCE property (symmetry)
    fc.assert(
      fc.property(pairs, ({ before, after }) => {
        const sides = (from: string, to: string) => documentDifferences(from, to).map((one) => [one.place, one.before, one.after])
        const turned = sides(after, before).map(([place, was, is]) => [place, is, was])
        const inOrder = (list: readonly unknown[][]) => list.map((one) => JSON.stringify(one)).sort()
        expect(inOrder(turned)).toEqual(inOrder(sides(before, after)))
      }),
      { seed: 42, numRuns: 12 },
    )
  })

  it('after one field was typed anew are that field, as typed and as its table reads it', () => {
    // SOURCE property (a length of an example, whichever it is)
    const lengths = [...exampleTexts.values()].flatMap((before) =>
      fieldsOf(before)
        .filter(({ kind, typed }) => kind === 'length' && typed !== undefined)
        .map((field) => ({ before, field })),
    )
    fc.assert(
      fc.property(fc.constantFrom(...lengths), ({ before, field }) => {
        const after = changeDocument(before, [typedChange(before, field.place, '1/4 in')])
        const read = { value: 6.35, unit: 'mm' }
        expect(documentDifferences(before, after)).toMatchObject([
          { place: field.place, before: { typed: field.typed, read: field.read }, after: { typed: '1/4 in', read } },
        ])
      }),
      { seed: 43, numRuns: 30 },
    )
  })
})

describe('a difference', () => {
  it('says where it stands in the words of the tables', () => {
    const after = changeDocument(heron, [
      { kind: 'set', place: ['title'], value: 'Heron, longer' },
      { kind: 'set', place: ['parts', 'middle', 'holes', 'dip', 'x'], value: '26.5 mm' },
      { kind: 'set', place: ['dimensions', 'baseLinkLength', 'value'], value: '42.2 mm' },
      { kind: 'set', place: ['parts', 'mount', 'outline', 2, 1], value: '-2.5 mm' },
    ])
    expect(documentDifferences(heron, after).map(({ where }) => where)).toEqual([
      'title',
      'dimension baseLinkLength, value',
      'part mount corner 3, y',
      'part middle hole dip, x',
    ])
  })

  it('of a thing that came or went has its text as it stands in the file', () => {
    const after = changeDocument(heron, [
      { kind: 'set', place: ['dimensions', 'spare'], value: { value: '1 mm', tolerance: 'h6' } },
    ])
    const came = { typed: '{ "value": "1 mm", "tolerance": "h6" }' }
    expect(documentDifferences(heron, after)).toEqual([{ place: ['dimensions', 'spare'], where: 'dimension spare', after: came }])
    expect(documentDifferences(after, heron)).toEqual([
      { place: ['dimensions', 'spare'], where: 'dimension spare', before: came },
    ])
  })

  it('is none where only layout and the order of keys are others', () => {
    const turned = JSON.stringify(Object.fromEntries(Object.entries(JSON.parse(heron)).reverse()))
    expect(documentDifferences(heron, turned)).toEqual([])
  })

  it('is found in a document with problems too, and a text that is no JSON is our fault', () => {
    const broken = changeDocument(heron, [{ kind: 'set', place: ['nobody knows'], value: [true, null] }])
    expect(documentDifferences(heron, broken)).toMatchObject([{ place: ['nobody knows'], after: { typed: '[true, null]' } }])
    expect(() => documentDifferences(heron, '{')).toThrow()
  })
})
