/**
 * Edits of random JSON texts in random layouts. The oracle is the language: `JSON.parse` of the changed text has to give the tree that
 * the same change makes of the parsed one.
 */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Change, JsonValue } from './change.ts'
import { changeDocument } from './change-document.ts'
import { valueAt } from './value-at.ts'

const forbidden = ['__proto__', 'constructor', 'prototype']
const key = fc.string({ maxLength: 6, unit: 'binary' }).filter((text) => !forbidden.includes(text))
const leaf = fc.oneof(
  fc.string({ maxLength: 8 }),
  fc.integer(),
  fc.double({ noNaN: true, noDefaultInfinity: true }).filter((value) => !Object.is(value, -0)),
  fc.boolean(),
  fc.constant(null),
)
const { tree } = fc.letrec<{ tree: JsonValue; object: JsonValue; list: JsonValue }>((tie) => ({
  tree: fc.oneof({ depthSize: 'small', maxDepth: 4 }, leaf, tie('object'), tie('list')),
  object: fc.dictionary(key, tie('tree'), { maxKeys: 5, noNullPrototype: true }),
  list: fc.array(tie('tree'), { maxLength: 4 }),
}))
const document = fc.dictionary(key, tree, { maxKeys: 6, noNullPrototype: true })
const layout = fc.constantFrom(undefined, 1, 2, 4, '\t')

type Place = (string | number)[]
type Branch = { [step: string]: JsonValue } | JsonValue[]

/** All places of a tree but its root. */
function placesOf(value: JsonValue, place: Place = []): Place[] {
  if (typeof value !== 'object' || value === null) return []
  const entries: [string | number, JsonValue][] = Array.isArray(value) ? [...value.entries()] : Object.entries(value)
  return entries.flatMap(([step, inner]) => [[...place, step], ...placesOf(inner, [...place, step])])
}

/** The same change on a tree, the plain way. */
function changedTree(tree: JsonValue, change: Change): JsonValue {
  const whole = structuredClone(tree) as Branch
  const owner = valueAt(whole, change.place.slice(0, -1)) as Branch
  const step = change.place.at(-1) as string
  if (change.kind === 'set') Reflect.set(owner, step, change.value)
  else if (Array.isArray(owner)) owner.splice(Number(step), 1)
  else Reflect.deleteProperty(owner, step)
  return whole
}

/** A tree, its text in some layout, and a change of one of its places or a new one beside them. */
const edits = fc
  .tuple(document, layout, tree, fc.nat(), fc.constantFrom('set', 'remove', 'add'), key)
  .map(([root, space, value, pick, what, name]) => {
    const places = placesOf(root)
    const owners = [[], ...places].filter((place) => typeof valueAt(root, place) === 'object' && valueAt(root, place) !== null)
    const owner = owners[pick % owners.length]
    const inner = valueAt(root, owner)
    const added = [...owner, Array.isArray(inner) ? inner.length : name]
    const place = what === 'add' || places.length === 0 ? added : places[pick % places.length]
    const change: Change = what === 'remove' ? { kind: 'remove', place } : { kind: 'set', place, value }
    return { root, text: JSON.stringify(root, null, space), change }
  })

describe('an edit of any document', () => {
  it('gives the tree that the change asks for', () => {
    // SOURCE other-method (the change made on the tree, the text read by the language's own reader)
    fc.assert(
      fc.property(edits, ({ root, text, change }) => {
        expect(JSON.parse(changeDocument(text, [change]))).toEqual(JSON.parse(JSON.stringify(changedTree(root, change))))
      }),
    )
  })

  it('of a value leaves all text before and behind it to the character', () => {
    // SOURCE property (an edit touches nothing but the value)
    fc.assert(
      fc.property(edits, ({ text, change }) => {
        fc.pre(change.kind === 'set' && valueAt(JSON.parse(text), change.place) !== undefined)
        const changed = changeDocument(text, [change])
        const marked = changeDocument(text, [{ kind: 'set', place: change.place, value: 'here it stands' }])
        const [before, behind] = marked.split('"here it stands"')
        expect(changed.startsWith(before) && changed.endsWith(behind)).toBe(true)
      }),
    )
  })

  it('that sets every value to what it is leaves the text as it is', () => {
    // SOURCE property (nothing changed is nothing touched)
    fc.assert(
      fc.property(document, layout, (root, space) => {
        const text = JSON.stringify(root, null, space)
        const changes = placesOf(root).map((place): Change => ({ kind: 'set', place, value: valueAt(root, place) as JsonValue }))
        expect(changeDocument(text, changes)).toBe(text)
      }),
    )
  })

  it('of several values at once is that of one after the other', () => {
    // SOURCE property (changes are made in their order; a place that comes again is set again)
    fc.assert(
      fc.property(document, layout, fc.array(fc.tuple(fc.nat(), leaf), { maxLength: 4 }), (root, space, picks) => {
        const places = placesOf(root).filter((place) => placesOf(valueAt(root, place) as JsonValue).length === 0)
        fc.pre(places.length > 0)
        const changes = picks.map(([pick, value]): Change => ({ kind: 'set', place: places[pick % places.length], value }))
        const text = JSON.stringify(root, null, space)
        const inTurn = changes.reduce((before, change) => changeDocument(before, [change]), text)
        expect(changeDocument(text, changes)).toBe(inTurn)
      }),
    )
  })
})
