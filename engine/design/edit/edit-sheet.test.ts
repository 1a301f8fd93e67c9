import { describe, expect, it } from 'vitest'
import { kindWords } from '../../numbers/quantity.ts'
import { readDesign } from '../read-design.ts'
import type { JsonValue } from './change.ts'
import { changeDocument } from './change-document.ts'
import { editSheet } from './edit-sheet.ts'
import type { Field } from './field.ts'
import { typedChange } from './read-field.ts'
import { exampleText, exampleTexts } from './test-support/example-texts.ts'
import { valueAt } from './value-at.ts'

const fieldsOf = (text: string): readonly Field[] =>
  editSheet(text).sections.flatMap(({ rows }) => rows.flatMap(({ fields }) => fields))

/** Places of everything that is typed in a document, found by walking its tree alone. */
function typedPlaces(value: JsonValue, place: readonly (string | number)[] = []): readonly string[] {
  if (typeof value !== 'object' || value === null) return [place.join('.')]
  const entries: [string | number, JsonValue][] = Array.isArray(value) ? [...value.entries()] : Object.entries(value)
  return entries.flatMap(([step, inner]) => typedPlaces(inner, [...place, step]))
}

/** What tells a document or an alternative from others is not edited: it decides which fields there are. */
const isMarker = (place: string): boolean => ['format', '$schema'].includes(place) || /(^|\.)kind$/.test(place)

describe.each([...exampleTexts])('the tables of %s', (_, text) => {
  const fields = fieldsOf(text)
  const typed = fields.filter((field) => field.typed !== undefined)

  it('name everything that is typed in the file once', () => {
    // SOURCE other-method (a walk over the plain tree, without the schema)
    const expected = typedPlaces(JSON.parse(text)).filter((place) => !isMarker(place))
    expect(typed.map(({ place }) => place.join('.')).sort()).toEqual([...expected].sort())
  })

  it('stand at places that are there; what is left out is not', () => {
    expect(typed.filter(({ place }) => valueAt(JSON.parse(text), place) === undefined)).toEqual([])
    const left = fields.filter((field) => field.typed === undefined)
    expect(left.filter(({ place, optional }) => valueAt(JSON.parse(text), place) !== undefined || !optional)).toEqual([])
  })

  it('have no problem of their own, and read every quantity', () => {
    expect(editSheet(text).problems).toEqual([])
    const unread = typed.filter((field) => field.problems.length > 0 || (isQuantity(field) && field.read === undefined))
    expect(unread.map(({ place }) => place.join('.'))).toEqual([])
  })

  it('offer what stands there among what may be chosen', () => {
    const chosen = typed.filter(({ choices }) => choices !== undefined)
    expect(chosen.length).toBeGreaterThan(0)
    expect(chosen.filter((field) => !field.choices?.includes(field.typed ?? '')).map(({ place }) => place.join('.'))).toEqual([])
  })

  it('typed again as they stand leave the file as it is', () => {
    const some = typed.filter(({ kind }, index) => kind === 'number' || kind === 'yes or no' || index % 12 === 0)
    const changes = some.map((field) => typedChange(text, field.place, field.typed ?? ''))
    expect(changeDocument(text, changes)).toBe(text)
  })

  it('call every field, row and section by a name of its own', () => {
    const { sections } = editSheet(text)
    for (const { rows } of sections) {
      expect(new Set(rows.map(({ title }) => title)).size).toBe(rows.length)
      for (const row of rows) expect(new Set(row.fields.map(({ label }) => label)).size).toBe(row.fields.length)
    }
    expect(new Set(sections.map(({ id }) => id)).size).toBe(sections.length)
  })
})

const words: ReadonlySet<string> = new Set(['text', 'choice', 'yes or no'])
const isQuantity = ({ kind }: Field): boolean => !words.has(kind)

describe('a field', () => {
  const fieldAt = (text: string, place: string): Field => fieldsOf(text).find((field) => field.place.join('.') === place)!
  const heron = exampleText('heron')

  it('says what was read of it, in inside units', () => {
    // SOURCE hand (topLinkLength is 24.507 mm; 0.3 N·mm; 4 deg is 4 π/180 rad)
    expect(fieldAt(heron, 'parts.topLink.holes.far.x').read).toEqual({ value: 24.507, unit: 'mm' })
    expect(fieldAt(heron, 'pins.mcp.drag').read).toEqual({ value: 0.3, unit: 'N·mm' })
    expect(fieldAt(heron, 'dimensions.drawnFlexion').read?.value).toBeCloseTo((4 * Math.PI) / 180, 14)
  })

  it('of a number shows all its digits as typed', () => {
    expect(fieldAt(heron, 'friction.filmed pin in hard-coated hole.rest.likely').typed).toBe('0.10')
  })

  it('asks for what the thing beside it asks for', () => {
    expect(fieldAt(heron, 'loadCases.carry.keeper.allowed').kind).toBe('force')
    expect(fieldAt(heron, 'requirements.effort.atMost').kind).toBe('couple')
    expect(fieldAt(heron, 'requirements.shortOfDeadCentre.atLeast').needed).toBe(kindWords('angle'))
    expect(fieldAt(heron, 'dimensions.pinDrag').kind).toBe('couple')
  })

  it('offers the holes of the part that is named beside it', () => {
    expect(fieldAt(heron, 'stops.shelf.round.hole').choices).toEqual(['near', 'far'])
    const ofMount = ['holes', 'holes.mcp', 'holes.base', 'outline', 'faces', 'faces.front', 'faces.back', 'threads']
    expect(fieldAt(heron, 'parts.mount.masked.1').choices).toEqual([...ofMount, 'threads.front', 'threads.rear'])
  })

  it('stands with its problem beside it when the file has one', () => {
    const broken = heron.replace('"6.47 mm"', '"6.47 kg"').replace('"pin": "mcp", "on"', '"pin": "mpc", "on"')
    expect(readDesign(broken).problems).toHaveLength(2)
    expect(fieldAt(broken, 'parts.mount.holes.base.x').problems).toMatchObject([{ code: 'wrong unit' }])
    expect(fieldAt(broken, 'springs.return.pin').problems).toMatchObject([{ code: 'unknown name' }])
    expect(editSheet(broken).problems).toEqual([])
  })
})

describe('tables of a file that is at fault', () => {
  it('have what is wrong with a thing as a whole in its row', () => {
    const broken = exampleText('heron').replace('"y": "4.33 mm"', '"y": "8 mm"')
    const { sections, problems } = editSheet(broken)
    const at = sections.flatMap(({ rows }) => rows).filter((row) => row.problems.length > 0)
    expect(at.map(({ id }) => id)).toEqual(['parts.proximal.holes.top'])
    expect(problems).toEqual([])
  })

  it('keep what stands at no field apart', () => {
    const broken = exampleText('heron').replace('"tip": "distal.tip",', '"tipp": "distal.tip",')
    expect(editSheet(broken).problems).toMatchObject([{ code: 'unknown key', place: 'tipp' }])
  })

  it('tell of a schema that is no text, though its name is no field', () => {
    const text = changeDocument(exampleText('heron'), [{ kind: 'set', place: ['$schema'], value: {} }])
    // SOURCE other-method (the reader of designs, asked itself)
    expect(editSheet(text).problems).toEqual(readDesign(text).problems)
  })

  it('are none where the text is no JSON, and the problem says where it ends', () => {
    expect(editSheet('{ "title": ')).toMatchObject({ sections: [], problems: [{ code: 'no JSON' }] })
  })

  it('have no fields inside of a thing that is no object: nothing could be typed there', () => {
    const broken = changeDocument(exampleText('heron'), [{ kind: 'set', place: ['stops', 'shelf'], value: '' }])
    expect(fieldsOf(broken).filter(({ place }) => place[0] === 'stops')).toEqual([])
    expect(editSheet(broken).problems).toMatchObject([{ place: 'stops.shelf' }])
  })

  it('do without a value that is nothing like what is needed', () => {
    const odd = '{ "parts": 3, "pins": { "a": null, "b": { "joins": {} } }, "drive": [], "requirements": { "r": {} } }'
    expect(fieldsOf(odd).filter(({ place }) => place[0] === 'parts')).toEqual([])
    expect(editSheet(odd).problems.length).toBeGreaterThan(0)
  })
})
