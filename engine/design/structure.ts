/**
 * Structure of the document: which keys, of which type. Faults are reported and taken out, each with the thing it
 * stands in (a hole, a pin, a spring), so that the sound rest can be read on and all problems of a file come at once.
 * What was taken out is remembered: a reference to it is no further problem.
 */
import type * as z from 'zod'
import { limits } from '../numbers/limits.ts'
import { nearestName } from '../numbers/nearest.ts'
import { quoted } from '../numbers/quote.ts'
import { type Document, documentSchema } from './document.ts'
import type { Json } from './json-text.ts'
import { knownKeys } from './known-keys.ts'
import type { Problem } from './problem.ts'

type Path = readonly PropertyKey[]
type Issue = z.core.$ZodIssue

export interface Structure {
  readonly document: Document
  readonly problems: readonly Problem[]
  /** True for a place that was taken out, or that stands in one that was. */
  readonly isBroken: (place: string) => boolean
  /** Places that were taken out. */
  readonly brokenPlaces: readonly string[]
}

/** @param json is not changed. */
export function readStructure(json: Json): Structure {
  if (typeof json !== 'object' || json === null || Array.isArray(json)) return noObject(json)
  const full = documentSchema.safeParse(json)
  if (full.success) return { document: full.data, problems: [], isBroken: () => false, brokenPlaces: [] }
  const reading: Reading = { rest: JSON.parse(JSON.stringify(json)), problems: [], broken: new Map() }
  takeOut(full.error.issues, reading)
  const document = soundRest(reading)
  const { problems, broken } = reading
  return { document, problems, isBroken: (place) => isWithin(place, broken), brokenPlaces: [...broken.keys()] }
}

function noObject(json: Json): Structure {
  const needed = 'an object: { "format": …, "title": …, … }'
  const problems = [{ code: 'wrong value', place: '', found: valueWords(json), needed }]
  return { document: {}, problems, isBroken: () => true, brokenPlaces: [] }
}

interface Reading {
  readonly rest: Json
  readonly problems: Problem[]
  readonly broken: Map<string, Path>
}

/** Made once: making a schema takes longer than using it. */
const partialSchema = documentSchema.partial()

/** What is taken out may uncover a further fault; after this many rounds nothing is trusted any more. */
const roundsMost = 4

function soundRest(reading: Reading): Document {
  for (let round = 0; round < roundsMost; round++) {
    const partial = partialSchema.safeParse(reading.rest)
    if (partial.success) return partial.data
    takeOut(partial.error.issues, reading)
  }
  return {}
}

function isWithin(place: string, broken: ReadonlyMap<string, Path>): boolean {
  const steps = place.split('.')
  return steps.some((_, index) => broken.has(steps.slice(0, index + 1).join('.')))
}

function takeOut(issues: readonly Issue[], { rest, problems, broken }: Reading): void {
  for (const issue of issues.flatMap((whole) => leaves(whole, rest))) {
    const path = issue.path
    if (issue.code === 'unrecognized_keys') {
      for (const key of issue.keys) {
        if (problems.length <= limits.problems) problems.push(unknownKey(path, key, rest))
        remove(rest, [...path, key])
      }
      continue
    }
    if (problems.length <= limits.problems) problems.push(problemOf(issue, rest))
    const thing = thingOf(path)
    broken.set(thing.join('.'), thing)
  }
  for (const path of broken.values()) remove(rest, path)
}

/** The faults of the alternative that was most likely meant, with whole paths; one that is no alternative at all stays as it is. */
function leaves(issue: Issue, rest: Json): readonly Issue[] {
  if (issue.code !== 'invalid_union') return [issue]
  const meant = issue.errors.filter(
    (errors) => !errors.some((error) => error.path.length === 0 && error.code !== 'unrecognized_keys'),
  )
  if (meant.length === 0) return [issue]
  const weight = (errors: readonly Issue[]) =>
    errors.reduce((sum, error) => sum + (error.code === 'unrecognized_keys' ? error.keys.length : 1), 0)
  const nearest = meant.reduce((best, errors) => (weight(errors) < weight(best) ? errors : best))
  return nearest.flatMap((error) => leaves({ ...error, path: [...issue.path, ...error.path] }, rest))
}

/** Sections whose entries have a name of their own and can be read one without the other. */
export const namedSections: ReadonlySet<PropertyKey> = new Set([
  'dimensions',
  'materials',
  'coatings',
  'friction',
  'wearRates',
  'parts',
  'pins',
  'stops',
  'springs',
  'screws',
  'grease',
  'loadCases',
  'toggles',
  'requirements',
  'orders',
  'bought',
  'demands',
  'benchTests',
  'risks',
])
const sectionsOfPart: ReadonlySet<PropertyKey> = new Set(['holes', 'edges', 'pads'])

/** The thing that falls out with a fault at `path`. */
function thingOf(path: Path): Path {
  if (!namedSections.has(path[0])) return path.slice(0, 1)
  if (path[0] === 'parts' && sectionsOfPart.has(path[2])) return path.slice(0, 4)
  return path.slice(0, 2)
}

function valueAt(json: Json, path: Path): Json | undefined {
  let value: Json | undefined = json
  for (const step of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, step)) return undefined
    value = (value as { [key: PropertyKey]: Json })[step]
  }
  return value
}

function remove(json: Json, path: Path): void {
  const owner = valueAt(json, path.slice(0, -1))
  const key = path.at(-1)
  if (typeof owner === 'object' && owner !== null && key !== undefined) Reflect.deleteProperty(owner, key)
}

/** A key that is known at the place belongs to another of its alternatives. */
function unknownKey(path: Path, key: string, rest: Json): Problem {
  const known = knownKeys(path)
  const place = [...path, key].join('.')
  if (known.includes(key)) {
    const beside = Object.keys(valueAt(rest, path) ?? {}).filter((other) => other !== key)
    const found = `the key ${quoted(key)} beside ${beside.map(quoted).join(', ')}`
    return { code: 'key too many', place, found, needed: 'one without the other', wayOut: 'Delete one of them.' }
  }
  const nearest = nearestName(key, known)
  return {
    code: 'unknown key',
    place,
    found: `the key ${quoted(key)}`,
    needed: `one of ${known.join(', ')}`,
    ...(nearest && { wayOut: `Did you mean ${nearest}?` }),
  }
}

function problemOf(issue: Issue, rest: Json): Problem {
  const place = issue.path.join('.')
  if (issue.code === 'invalid_key') {
    const needed = issue.issues[0]?.message ?? 'another key'
    return { code: 'wrong key', place, found: `the key ${quoted(String(issue.path.at(-1)))}`, needed }
  }
  const found = valueAt(rest, issue.path)
  const needed = issue.message
  return { code: found === undefined ? 'missing' : 'wrong value', place, found: valueWords(found), needed }
}

/** Digits of a number in a message; more would not be recognised as what was typed. */
const shownDigits = 12

function valueWords(value: Json | undefined): string {
  if (value === undefined) return 'nothing'
  if (value === null) return 'null'
  if (typeof value === 'string') return quoted(value)
  if (Array.isArray(value)) return `a list of ${value.length}`
  if (typeof value === 'object')
    return `an object with ${Object.keys(value).slice(0, 6).map(quoted).join(', ') || 'nothing in it'}`
  return typeof value === 'number' ? `the number ${Number(value.toPrecision(shownDigits))}` : `${value}`
}
