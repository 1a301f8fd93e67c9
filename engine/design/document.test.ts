import Ajv2020 from 'ajv/dist/2020.js'
import { describe, expect, it } from 'vitest'
import { designFormat, designSchema } from './document.ts'
import { readDesign } from './read-design.ts'
import { type Changes, documentText } from './test-support/full-document.ts'

/** The published schema, as an editor's validator from outside the project reads it. */
const isValid = new Ajv2020({ strict: true, allowUnionTypes: true }).compile(designSchema())
const accepts = (changes: Changes) => isValid(JSON.parse(documentText(changes)))

it('is a schema of draft 2020-12 that accepts a document with every key', () => {
  expect(designSchema()).toMatchObject({ $schema: 'https://json-schema.org/draft/2020-12/schema' })
  expect(accepts({})).toBe(true)
})

describe('the published schema refuses what the reader refuses for its structure', () => {
  const rows: readonly [string, Changes][] = [
    ['another format', { format: 'fingerwright-design/9' }],
    ['an unknown key', { colour: 'blue' }],
    ['an unknown key deep inside', { 'parts.middle.holes.pip.diametre': '3 mm' }],
    ['a missing key', { 'parts.middle.holes.pip.diameter': undefined }],
    ['a number for a length', { 'parts.middle.holes.pip.x': 0 }],
    ['an unknown role', { 'parts.middle.role': 'finger' }],
    ['an id that begins with a digit', { 'toggles.1st': { pins: ['linkTop', 'linkTip', 'dip'] } }],
    ['an unknown kind', { 'springs.pull.kind': 'leaf' }],
    ['a key of another kind', { 'springs.push.initial': '1 N' }],
    ['a pin with one hole', { 'pins.guide.joins': ['middle.guide'] }],
    ['two bounds in one requirement', { 'requirements.margin.atMost': '9 deg' }],
    ['a corner with three numbers', { 'parts.proximal.outline.0': ['1 mm', '2 mm', '3 mm'] }],
  ]
  it.each(rows)('%s', (_, changes) => {
    expect(accepts(changes)).toBe(false)
    expect(readDesign(documentText(changes)).problems?.length).toBeGreaterThan(0)
  })
})

it('accepts the smaller forms too', () => {
  const pull = {
    kind: 'pull',
    on: { part: 'a', hole: 'b' },
    towards: { part: 'c', x: '1 mm', y: '2 mm' },
    open: '0 mm',
    closed: '9 mm',
  }
  expect(accepts({ drive: pull, note: undefined, springs: undefined, 'dimensions.inset': 2, tip: undefined })).toBe(true)
})

interface SchemaNode {
  readonly [key: string]: unknown
}

/** Places of properties without a description, of their own or in what stands there. */
function undescribed(node: SchemaNode, place: string): readonly string[] {
  const properties = Object.entries((node.properties ?? {}) as Record<string, SchemaNode>)
  const inner = [
    ...properties.map(([key, value]) => [value, `${place}.${key}`] as const),
    ...['anyOf', 'oneOf'].flatMap((key) => ((node[key] ?? []) as SchemaNode[]).map((one) => [one, place] as const)),
    ...(['items', 'additionalProperties'] as const).flatMap((key) =>
      typeof node[key] === 'object' ? [[node[key] as SchemaNode, `${place}.*`] as const] : [],
    ),
  ]
  const here = properties.filter(([, value]) => value.description === undefined).map(([key]) => `${place}.${key}`)
  return [...here, ...inner.flatMap(([value, at]) => undescribed(value, at))]
}

it('describes every key, so that an editor can help', () => {
  expect(undescribed(designSchema() as SchemaNode, '')).toEqual([])
})

it('names its format in title and description', () => {
  expect(designSchema()).toMatchObject({ title: 'A finger for Fingerwright', description: expect.stringContaining(designFormat) })
})
