import fc from 'fast-check'
import { expect, it } from 'vitest'
import { limits } from '../numbers/limits.ts'
import { readJson } from './json-text.ts'
import type { Problem } from './problem.ts'
import { readDesign } from './read-design.ts'
import { sentence } from './sentence.ts'
import { documentText } from './test-support/full-document.ts'

const seed = 20_261_125
const runs = 10_000

type Json = string | number | boolean | null | Json[] | { [key: string]: Json }
type Place = readonly (string | number)[]

const soundText = documentText()
const sound: Json = JSON.parse(soundText)

/** What stands beside the finger itself: nine of ten documents leave it out, so that faults of the finger are met more often. */
const BESIDE = [
  ...['variation', 'coatings', 'wearRates', 'factors', 'use', 'givesWay', 'screws', 'grease', 'orders', 'bought', 'making'],
  ...['demands', 'benchTests', 'riskScales', 'risks', 'shownBy', 'coating', 'masked', 'racks', 'wear'],
]
const plain: Json = JSON.parse(soundText, (key, value) => (BESIDE.includes(key) ? undefined : value))

/** Every place of the document, the document itself first. */
function placesIn(json: Json, place: Place = []): readonly Place[] {
  if (typeof json !== 'object' || json === null) return [place]
  const keys = Array.isArray(json) ? [...json.keys()] : Object.keys(json)
  return [place, ...keys.flatMap((key) => placesIn((json as Record<string | number, Json>)[key], [...place, key]))]
}

function valueAt(json: Json, place: Place): Json {
  return place.reduce<Json>((value, step) => (value as Record<string | number, Json>)[step], json)
}

/** The document with the value at a place replaced, or with the place taken out. */
function replaced(json: Json, place: Place, value: Json | undefined): Json {
  if (place.length === 0) return value ?? null
  const [step, ...rest] = place
  const copy = (Array.isArray(json) ? [...json] : { ...(json as object) }) as Record<string | number, Json>
  if (!Object.hasOwn(copy, step)) return copy
  if (rest.length > 0) copy[step] = replaced(copy[step], rest, value)
  else if (value !== undefined) copy[step] = value
  else if (Array.isArray(copy)) copy.splice(Number(step), 1)
  else Reflect.deleteProperty(copy, step)
  return copy
}

const oddTexts = fc.constantFrom(
  ...[
    '',
    ' ',
    '3',
    '3 mm',
    '-3 mm',
    '0 mm',
    '1e400 mm',
    '3 N',
    '7 deg',
    '7',
    '1/0',
    'sqrt(-1)',
    'pinDiameter',
    'area',
    'nothing',
  ],
  ...[
    'mount.mcp',
    'middle.dip',
    'mount',
    'middle',
    'mcp',
    'distal',
    'H7',
    'h6',
    '1e9 mm',
    '((((',
    '\u0000',
    '\ud800',
    '__proto__',
    'a.b.c',
  ],
)
const oddNumbers = fc.constantFrom(0, -0, 1, -1, 0.5, 1e308, -1e308, 5e-324, 1e9, 360)
const nests = fc
  .integer({ min: 1, max: limits.nesting + 4 })
  .map((depth) => JSON.parse(`${'['.repeat(depth)}${']'.repeat(depth)}`))
const oddKeys = fc.constantFrom('x', 'note', 'kind', 'toString', 'hasOwnProperty', 'valueOf', '', '9', 'part', 'a b')

/** One fault or harmless change, as a step from one document to the next. @param sound the document without any */
const mutationOf = (sound: Json, places = placesIn(sound)): fc.Arbitrary<(json: Json) => Json> =>
  fc.oneof(
    fc.constantFrom(...places).map((place) => (json: Json) => replaced(json, place, undefined)),
    fc
      .tuple(fc.constantFrom(...places), fc.oneof(oddTexts, oddNumbers, fc.boolean(), fc.constant(null), nests, fc.jsonValue()))
      .map(
        ([place, value]) =>
          (json: Json) =>
            replaced(json, place, value as Json),
      ),
    fc.tuple(fc.constantFrom(...places), fc.constantFrom(...places)).map(
      ([one, other]) =>
        (json: Json) =>
          replaced(replaced(json, one, valueAt(sound, other)), other, valueAt(sound, one)),
    ),
    fc
      .tuple(fc.constantFrom(...places), fc.nat(), fc.string({ unit: 'binary', maxLength: 3 }))
      .map(([place, at, letters]) => (json: Json) => {
        const text = valueAt(sound, place)
        if (typeof text !== 'string') return json
        const cut = at % (text.length + 1)
        return replaced(json, place, text.slice(0, cut) + letters + text.slice(cut + (at % 2)))
      }),
    fc
      .tuple(fc.constantFrom(...places), oddKeys, fc.oneof(oddTexts, oddNumbers, fc.jsonValue()))
      .map(([place, key, value]) => (json: Json) => {
        const owner = valueAt(sound, place)
        if (typeof owner !== 'object' || owner === null || Array.isArray(owner)) return json
        return replaced(json, place, { ...owner, [key]: value as Json })
      }),
  )

/** Text of a mutated document; keys that JSON.stringify would not write are put in as text. */
const mutatedText = (sound: Json) =>
  fc
    .tuple(
      fc.array(mutationOf(sound), { minLength: 1, maxLength: 4 }),
      fc.constantFrom('', '', '', '"__proto__":{"role":"mount"},', '"constructor":1,'),
    )
    .map(([steps, planted]) => {
      const text = JSON.stringify(steps.reduce((json, step) => step(json), sound))
      return planted === '' ? text : text.replace('{', `{${planted}`)
    })

/** Numbers anywhere in a value that are not finite. */
function strayNumbers(value: unknown): readonly number[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [value]
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(strayNumbers) : []
}

/** Problems that say too little, or something that only a programmer would understand. */
const untellable = (problems: readonly Problem[]) =>
  problems.filter(
    (problem) =>
      problem.code === '' ||
      problem.found === '' ||
      problem.needed === '' ||
      /undefined|NaN|\[object|Invalid/.test(sentence('x.json', problem)),
  )

/** A design with finite numbers only, or problems that can be told; says which. One expectation each, because they are many. */
function judge(text: string): 'design' | 'problems' {
  const { value, problems } = readDesign(text)
  if (value) {
    expect(strayNumbers(value)).toEqual([])
    return 'design'
  }
  const isTold = problems.length > 0 && problems.length <= limits.problems + 1
  expect(isTold ? untellable(problems) : problems).toEqual([])
  return 'problems'
}

// In four lots, so that none takes long on a busy machine; the first is of the whole document, each of which takes three times as long.
it.each([
  [1, 1000],
  [2, 3000],
  [3, 3000],
  [4, 3000],
])(
  'gives 10,000 mutated documents a design or problems, never an exception or a number that is none (lot %i of 4, %i documents)',
  (lot, lot_count) => {
    const seen = { design: 0, problems: 0 }
    fc.assert(
      fc.property(mutatedText(lot > 1 ? plain : sound), (text) => {
        seen[judge(text)]++
      }),
      { seed: seed + lot, numRuns: lot_count },
    )
    // SOURCE property (some changes do no harm, most do: both roads are walked)
    expect(seen.design).toBeGreaterThan(lot_count / 100)
    expect(seen.problems).toBeGreaterThan(lot_count / 2)
  },
)

it('takes the plain document too', () => {
  expect(judge(JSON.stringify(plain))).toBe('design')
})

it('leaves the language’s own objects alone', () => {
  judge(documentText().replace('{', '{"__proto__":{"polluted":1},"constructor":{"prototype":{"polluted":1}},'))
  expect({}).not.toHaveProperty('polluted')
})

it('gives 10,000 random texts problems, never an exception', () => {
  const piece = fc.constantFrom(
    '{',
    '}',
    '[',
    ']',
    ':',
    ',',
    '"',
    '"a"',
    '"parts"',
    '1',
    '-',
    '0',
    'true',
    'null',
    '\\u00',
    '\n',
    ' ',
    '\ufeff',
  )
  const texts = fc.oneof(
    fc.string({ unit: 'binary', maxLength: 80 }),
    fc.json({ maxDepth: 5 }),
    fc.array(piece, { maxLength: 40 }).map((pieces) => pieces.join('')),
    fc.nat().map((length) => soundText.slice(0, length % soundText.length)),
  )
  fc.assert(
    fc.property(texts, (text) => {
      expect(judge(text)).toBe('problems')
    }),
    { seed, numRuns: runs },
  )
})

/** What the built-in reader makes of a text, or undefined. */
function builtIn(text: string): Json | undefined {
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}

it('reads JSON as the built-in reader does, on 10,000 sound and garbled texts', () => {
  const garbled = fc
    .tuple(
      fc.json({ maxDepth: 5 }),
      fc.nat(),
      fc.constantFrom('', ',', '"', '\\', '\n', '0', '.', 'e', '-', ' ', '\t', '\u0001', '}', ']'),
    )
    .map(([text, at, letter]) => {
      const cut = at % (text.length + 1)
      return text.slice(0, cut) + letter + text.slice(cut + (at % 3))
    })
  const texts = fc.oneof(fc.json({ maxDepth: 5 }), garbled, fc.double().map(String))
  fc.assert(
    fc.property(texts, (text) => {
      const { value, problems } = readJson(text)
      // Doubled and forbidden keys are refused by us alone.
      if (problems.some(({ code }) => code !== 'no JSON')) return
      // SOURCE other-method (JSON.parse of the language, which takes numbers beyond all for infinity; we refuse them)
      const expected = builtIn(text)
      expect(value).toEqual(strayNumbers(expected).length > 0 ? undefined : expected)
    }),
    { seed, numRuns: runs },
  )
})
