/** Editing goes on whatever the document looks like: a value is put out of order, then tables, fields, names and removals are asked for. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Place } from '../json-places.ts'
import { readDesign } from '../read-design.ts'
import type { Change, JsonValue } from './change.ts'
import { changeDocument } from './change-document.ts'
import { dependents } from './dependents.ts'
import { editSheet } from './edit-sheet.ts'
import type { Field } from './field.ts'
import { readField, typedChange } from './read-field.ts'
import { removalOf } from './removal.ts'
import { isThing, renamed } from './renamed.ts'
import { exampleText } from './test-support/example-texts.ts'
import { holds } from './value-at.ts'

const crane = exampleText('crane')
const seed = 20261127
const numRuns = 70

function placesOf(value: JsonValue, place: Place = []): readonly Place[] {
  if (!holds(value)) return []
  const entries: [string | number, JsonValue][] = Array.isArray(value) ? [...value.entries()] : Object.entries(value)
  return entries.flatMap(([step, inner]) => [[...place, step], ...placesOf(inner, [...place, step])])
}

const places = placesOf(JSON.parse(crane))
const anyPlace = fc.constantFrom(...places)
const oddValue = fc.oneof(
  fc.jsonValue({ maxDepth: 3 }).map((value) => JSON.parse(JSON.stringify(value)) as JsonValue),
  fc.constantFrom<JsonValue>('', '1 mm', 'proximalLength', 'mount', 'mount.mcp', 3, true, null, [], {}, { kind: 'turn' }, [
    'mcp',
    'mcp',
  ]),
)

/** Crane with one to three values out of order. Later changes may find that what they change is gone; these are left out. */
const garbledTexts = fc
  .array(fc.tuple(anyPlace, oddValue, fc.boolean()), { minLength: 1, maxLength: 3 })
  .map((changes) =>
    changes.reduce(
      (text, [place, value, isGone]) =>
        changedWhereThere(text, isGone ? { kind: 'remove', place } : { kind: 'set', place, value }),
      crane,
    ),
  )

function changedWhereThere(text: string, change: Change): string {
  const owner = placesOf(JSON.parse(text)).some((place) => JSON.stringify(place) === JSON.stringify(change.place))
  return owner ? changeDocument(text, [change]) : text
}

const fieldsOf = (text: string): readonly Field[] =>
  editSheet(text).sections.flatMap(({ rows }) => rows.flatMap(({ fields }) => fields))

describe('of a document that is out of order', () => {
  it('the tables tell every problem once, at a field, in its row or apart', () => {
    fc.assert(
      fc.property(garbledTexts, (text) => {
        const { sections, problems: apart } = editSheet(text)
        const rows = sections.flatMap((section) => section.rows)
        const told = [...apart, ...rows.flatMap((row) => row.problems), ...fieldsOf(text).flatMap((field) => field.problems)]
        // SOURCE other-method (the reader of designs, asked itself)
        const problems = readDesign(text).problems ?? []
        const words = (all: typeof problems) => all.map((problem) => JSON.stringify(problem)).sort()
        expect(words(told)).toEqual(words(problems))
      }),
      { seed, numRuns },
    )
  })

  it('a field takes what is typed and shows it', () => {
    const typing = fc.oneof(
      fc.string({ maxLength: 12 }),
      fc.constantFrom('1/4 in', '3 mm', '7', 'yes', 'no', 'mount', '0.10', '- 3 mm'),
    )
    fc.assert(
      fc.property(garbledTexts, fc.nat(), typing, (text, pick, typed) => {
        const fields = fieldsOf(text)
        fc.pre(fields.length > 0)
        const field = fields[pick % fields.length]
        readField(text, field.place, typed)
        const after = fieldsOf(changeDocument(text, [typedChange(text, field.place, typed)]))
        const shown = after.find(({ place }) => JSON.stringify(place) === JSON.stringify(field.place))
        // SOURCE property (what is typed is stored; what may be left out and is left empty is not)
        const expected = typed.trim() === '' && field.optional ? undefined : typed.trim()
        // A choice of alternatives may turn on what was typed: then other fields stand there.
        if (shown) expect(shown.typed === typed ? typed.trim() : shown.typed).toBe(expected)
      }),
      { seed, numRuns },
    )
  })

  it('names are followed, and what is removed or renamed leaves no new problem', () => {
    fc.assert(
      fc.property(garbledTexts, fc.nat(), (text, pick) => {
        const there = placesOf(JSON.parse(text))
        fc.pre(there.length > 0)
        const place = there[pick % there.length]
        dependents(text, place)
        const removal = removalOf(text, place)
        if (removal.changes) expect(newProblems(text, changeDocument(text, removal.changes))).toEqual([])
        if (!isThing(place)) return
        const { value } = renamed(text, place, 'quiteAnotherName')
        if (value)
          expect(newProblems(text, changeDocument(text, value)).filter(({ code }) => code === 'unknown name')).toEqual([])
      }),
      { seed, numRuns },
    )
  })
})

function newProblems(before: string, after: string) {
  const had = new Set((readDesign(before).problems ?? []).map(({ code, place, found }) => `${code} ${place} ${found}`))
  return (readDesign(after).problems ?? []).filter(({ code, place, found }) => !had.has(`${code} ${place} ${found}`))
}
