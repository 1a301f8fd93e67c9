/**
 * Walks a document together with its schema and tells of every leaf: where it stands, what it means, whether it may be left out.
 * The tables that are edited, the references that are followed and the inputs whose sensitivity is asked for all come from here, so that a
 * new key of the schema is known to all of them.
 */
import * as z from 'zod'
import { documentSchema } from '../document.ts'
import type { Place } from '../json-places.ts'
import { type Meaning, meanings } from '../schema-meaning.ts'
import type { JsonValue } from './change.ts'
import { entriesOf, holds } from './value-at.ts'

/** One value of the document that is typed as a whole, or a key that may be typed there and is left out. */
export interface Leaf {
  readonly place: Place
  readonly schema: z.ZodType
  readonly meaning: Meaning | undefined
  /** Undefined where it is left out. */
  readonly value: JsonValue | undefined
  readonly isOptional: boolean
  /** What the schema says of it to an editor. */
  readonly says: string | undefined
  /** The steps of the place that lead to the thing it belongs to: an entry of a section, or a member of a list of things. */
  readonly row: Place
}

/** All leaves in the order of the schema and, within it, of the document; what does not fit the schema is passed over. */
export function leavesOf(document: JsonValue): readonly Leaf[] {
  return leavesIn({ schema: documentSchema, value: document, place: [], row: [], isOptional: false })
}

interface Walked {
  readonly schema: z.ZodType
  readonly value: JsonValue | undefined
  readonly place: Place
  readonly row: Place
  readonly isOptional: boolean
  readonly says?: string | undefined
}

function leavesIn(walked: Walked): readonly Leaf[] {
  const { schema, value, place, row, isOptional } = walked
  const says = walked.says ?? schema.description
  if (schema instanceof z.ZodOptional)
    return leavesIn({ ...walked, schema: schema.unwrap() as z.ZodType, says, isOptional: true })
  const meaning = meanings.get(schema)
  if (meaning === undefined && schema instanceof z.ZodUnion) {
    return leavesIn({ ...walked, says, schema: likeliest(schema.options as readonly z.ZodType[], value) })
  }
  if (schema instanceof z.ZodObject) return leavesOfObject(walked, schema.shape)
  if (schema instanceof z.ZodRecord) return leavesOfRecord(walked, schema.valueType as z.ZodType)
  if (schema instanceof z.ZodArray) return leavesOfList(walked, schema)
  if (schema instanceof z.ZodTuple) return leavesOfTuple(walked, schema.def.items as readonly z.ZodType[])
  if (schema instanceof z.ZodLiteral) return []
  return [{ place, schema, meaning, value, isOptional, says, row: row.length === 0 ? place.slice(0, 1) : row }]
}

/** Of several schemas the one that a value was most likely meant for. */
function likeliest(schemas: readonly z.ZodType[], value: JsonValue | undefined): z.ZodType {
  const scores = schemas.map((schema) => likeness(schema, value))
  return schemas[scores.indexOf(Math.max(...scores))]
}

const misfit = -1000

/** How well a value goes with a schema: by its type, and for objects by the keys that they share. */
function likeness(schema: z.ZodType, value: JsonValue | undefined): number {
  if (!(schema instanceof z.ZodObject)) return value === undefined || schema.safeParse(value).success ? 0 : misfit
  if (!holds(value) || Array.isArray(value)) return misfit
  const shape: Readonly<Record<string, z.ZodType>> = schema.shape
  return entriesOf(value).reduce((sum, [key, inner]) => {
    const known = Object.hasOwn(shape, key) ? shape[key] : undefined
    const isOther = known instanceof z.ZodLiteral && !known.safeParse(inner).success
    return sum + (known === undefined ? -1 : isOther ? misfit : 1)
  }, 0)
}

/** Keys that are left out are leaves too where one text, number or word may stand. */
function leavesOfObject({ value, place, row }: Walked, shape: Readonly<Record<string, unknown>>): readonly Leaf[] {
  if (!holds(value) || Array.isArray(value)) return []
  const entries = new Map(entriesOf(value))
  return Object.entries(shape).flatMap(([key, schema]) =>
    leavesIn({ schema: schema as z.ZodType, value: entries.get(key), place: [...place, key], row, isOptional: false }),
  )
}

function leavesOfRecord({ value, place }: Walked, schema: z.ZodType): readonly Leaf[] {
  return entriesOf(value).flatMap(([key, inner]) => {
    const here = [...place, key]
    return leavesIn({ schema, value: inner, place: here, row: here, isOptional: false })
  })
}

/**
 * Members that are things or points have rows of their own; ids and the two values of a pair belong to what they stand in. Where one text or word is
 * a member, the place behind the last is a leaf that is left out, and a member may be left out where the list does without.
 */
function leavesOfList({ value = [], place, row }: Walked, list: z.ZodArray): readonly Leaf[] {
  if (!Array.isArray(value)) return []
  const members = value as readonly JsonValue[]
  const schema = list.element as z.ZodType
  const isOptional = members.length > 0 && list.safeParse(members.slice(1)).success
  return [...members, undefined].flatMap((inner, index) =>
    leavesIn({
      schema,
      value: inner,
      place: [...place, index],
      row: inner !== undefined && holds(inner) ? [...place, index] : row,
      isOptional: inner === undefined || isOptional,
    }),
  )
}

function leavesOfTuple({ value, place, row }: Walked, items: readonly z.ZodType[]): readonly Leaf[] {
  if (!Array.isArray(value)) return []
  return (value as readonly JsonValue[]).flatMap((inner, index) => {
    const schema = items.at(index)
    const here = [...place, index]
    return schema ? leavesIn({ schema, value: inner, place: here, row: holds(inner) ? here : row, isOptional: false }) : []
  })
}
