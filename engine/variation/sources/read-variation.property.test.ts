import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { expect, it } from 'vitest'
import type { Change, JsonValue } from '../../design/edit/change.ts'
import { changeDocument } from '../../design/edit/change-document.ts'
import { entriesOf, valueAt } from '../../design/edit/value-at.ts'
import type { Place } from '../../design/json-places.ts'
import { readDesign } from '../../design/read-design.ts'
import { documentText } from '../../design/test-support/full-document.ts'
import { valuesAt } from './law.ts'
import { readVariation } from './read-variation.ts'

const seed = 20_261_127
const heron = readFileSync(new URL('../../../designs/heron.json', import.meta.url), 'utf8')
const crane = documentText()

const normals = fc.array(fc.double({ min: -4, max: 4, noNaN: true }), { minLength: 80, maxLength: 80 })

it('a set with other dimensions is the document with those dimensions written in', () => {
  const { sources, setOf } = readVariation(heron).value!
  fc.assert(
    fc.property(normals, (drawn) => {
      const values = valuesAt(sources, drawn)
      const own = sources.map(({ id, nominal }, index) => (id.startsWith('dimensions.') ? values[index] : nominal))
      const written = sources.flatMap(({ id }, index): readonly Change[] => {
        const [section, name] = id.split('.')
        return section === 'dimensions' ? [{ kind: 'set', place: [section, name, 'value'], value: `${own[index]} mm` }] : []
      })
      // SOURCE other-method (the text with the values in it, read as any document)
      const typed = readDesign(changeDocument(heron, written))
      const made = setOf(own)
      expect(made.value?.parts).toEqual(typed.value?.parts)
      expect(made.value?.pins.map((pin) => pin.diameter_mm)).toEqual(typed.value?.pins.map((pin) => pin.diameter_mm))
      expect(made.value?.stops.map(({ round }) => round)).toEqual(typed.value?.stops.map(({ round }) => round))
      expect((made.problems ?? []).map(({ code, place }) => [code, place])).toEqual(
        (typed.problems ?? []).map(({ code, place }) => [code, place]),
      )
    }),
    { seed, numRuns: 15 },
  )
})

it('any set of a design is a design or has its problems, and coated sizes keep their limits', () => {
  const { sources, setOf } = readVariation(crane).value!
  const [pin, film] = ['pins.mcp.diameter', 'coatings.thin film.thickness'].map((id) => sources.findIndex((one) => one.id === id))
  fc.assert(
    fc.property(normals, (drawn) => {
      const values = valuesAt(sources, drawn)
      values[pin] = Math.min(sources[pin].most, Math.max(sources[pin].least, values[pin]))
      values[film] = Math.min(sources[film].most, Math.max(sources[film].least, values[film]))
      const { value, problems } = setOf(values)
      expect(value === undefined).toBe(problems !== undefined)
      // SOURCE property (h6 on 3 mm, finished and coated: 2.994 to 3 with every batch)
      const diameter_mm = value?.pins[0].diameter_mm ?? 3
      expect(diameter_mm).toBeGreaterThanOrEqual(2.994 - 1e-12)
      expect(diameter_mm).toBeLessThanOrEqual(3 + 1e-12)
    }),
    { seed, numRuns: 60 },
  )
})

function placesOf(value: JsonValue, place: Place = []): readonly Place[] {
  return entriesOf(value).flatMap(([step, inner]) => [[...place, step], ...placesOf(inner, [...place, step])])
}

const touched = new Set(['dimensions', 'coatings', 'variation', 'generalTolerance', 'parts', 'pins', 'stops', 'springs'])
const places = placesOf(JSON.parse(crane)).filter(([section]) => touched.has(String(section)))
const odd = fc.constantFrom<JsonValue>(
  '',
  '0 mm',
  '1 um',
  '3 mm',
  '60 mm',
  'H7',
  'h6',
  't6',
  'RC4',
  'uniform',
  0,
  1,
  true,
  'pinDiameter',
  '2 %',
  [],
  {},
)

it('what is put out of order is refused as it is by the reader of designs, or varies', () => {
  fc.assert(
    fc.property(fc.constantFrom(...places), odd, fc.boolean(), normals, (place, value, isGone, drawn) => {
      if (valueAt(JSON.parse(crane), place) === undefined) return
      const text = changeDocument(crane, [isGone ? { kind: 'remove', place } : { kind: 'set', place, value }])
      const { value: variation, problems } = readVariation(text)
      // SOURCE other-method (the reader of designs)
      expect(problems).toEqual(readDesign(text).problems)
      if (!variation) return
      expect(variation.sources.every(({ least, most, nominal }) => least < most && Number.isFinite(nominal))).toBe(true)
      expect(Object.keys(variation.setOf(valuesAt(variation.sources, drawn)))).toHaveLength(1)
    }),
    { seed, numRuns: 60 },
  )
})
