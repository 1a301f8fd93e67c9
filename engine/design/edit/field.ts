import * as z from 'zod'
import { powersText } from '../../numbers/powers.ts'
import { asKind, insideUnit, insideValue, kindOf, kindWords, type QuantityKind } from '../../numbers/quantity.ts'
import type { Place } from '../json-places.ts'
import type { Problem } from '../problem.ts'
import { choicesOf } from './choices.ts'
import { type Desk, kindOfLeaf, measuredText, typedText } from './desk.ts'
import { fieldLabel } from './field-words.ts'
import type { Leaf } from './leaves.ts'

/** How a typed quantity was read. */
export interface FieldReading {
  readonly value: number
  /** Inside unit: mm, rad, N, N·mm, N/mm, N·mm/rad, MPa, kg, kg/mm³ or 1; of a dimension of another kind its units written out. */
  readonly unit: string
}

/** One place of the document where something may be typed. */
export interface Field {
  readonly place: Place
  readonly label: string
  /** What is typed there; `quantity` where any kind will do. */
  readonly kind: QuantityKind | 'quantity' | 'text' | 'choice' | 'yes or no'
  /** As it stands in the document; undefined where it is left out. */
  readonly typed: string | undefined
  readonly choices?: readonly string[]
  readonly read?: FieldReading
  /** What is expected, in words. */
  readonly needed: string
  /** What the place is for, in words. */
  readonly says?: string
  /** It may be left out. */
  readonly optional: boolean
  /** Problems of the document that stand at this place. */
  readonly problems: readonly Problem[]
}

/** A leaf as a field. */
export function fieldOf(desk: Desk, leaf: Leaf): Field {
  const typed = typedText(desk, leaf)
  const kind = fieldKind(desk, leaf)
  const choices = kind === 'choice' ? choicesOf(desk, leaf) : undefined
  const read = typed === undefined ? undefined : readTyped(desk, leaf, typed)
  const place = leaf.place.join('.')
  return {
    place: leaf.place,
    label: fieldLabel(leaf),
    kind,
    typed,
    ...(choices && { choices }),
    ...(read && { read }),
    needed: neededAt(leaf, { kind, choices }),
    ...(leaf.says !== undefined && { says: leaf.says }),
    optional: leaf.isOptional,
    problems: desk.problems.filter((problem) => problem.place === place),
  }
}

/** How a text would be read at a leaf; undefined for one that is no quantity, or not of the kind that is needed. */
export function readTyped(desk: Desk, leaf: Leaf, typed: string): FieldReading | undefined {
  if (!isQuantity(leaf)) return undefined
  const measured = measuredText(typed, desk.names)
  if (!measured) return undefined
  const kind = leaf.meaning?.is === 'size' ? kindOf(measured.powers) : kindOfLeaf(desk, leaf)
  if (!kind) return leaf.meaning?.is === 'size' ? { value: measured.value, unit: powersText(measured.powers) } : undefined
  return asKind(measured, kind).fault ? undefined : { value: insideValue(measured, kind), unit: insideUnit(kind) }
}

const quantities: ReadonlySet<string | undefined> = new Set(['quantity', 'size', 'amount', 'bound'])
const isQuantity = ({ meaning }: Leaf): boolean => quantities.has(meaning?.is)

function fieldKind(desk: Desk, leaf: Leaf): Field['kind'] {
  if (isQuantity(leaf)) return kindOfLeaf(desk, leaf) ?? 'quantity'
  if (leaf.meaning !== undefined || leaf.schema instanceof z.ZodEnum) return 'choice'
  return leaf.schema instanceof z.ZodBoolean ? 'yes or no' : 'text'
}

const things = {
  parts: 'a part of this design',
  pins: 'a pin of this design',
  stops: 'a stop of this design',
  springs: 'a spring of this design',
  loadCases: 'a load case of this design',
  friction: 'a friction pair of this design',
  wearRates: 'a rate of wear of the table, or of this design',
  materials: 'a material of the table, or of this design',
  coatings: 'a coating of the table, or of this design',
  requirements: 'a requirement of this design',
  benchTests: 'a bench test of this design',
  holes: 'a hole',
  edges: 'an edge',
  pads: 'a pad',
}

function neededAt({ meaning }: Leaf, { kind, choices }: { kind: Field['kind']; choices: readonly string[] | undefined }): string {
  if (meaning?.is === 'size') return 'a quantity with its unit, an expression or a plain number'
  if (meaning?.is === 'figure') return 'a figure of this design'
  if (meaning?.is === 'name') return things[meaning.of]
  if (meaning?.is === 'face') return 'a face of that part'
  if (meaning?.is === 'toleranced') return 'a size of this design that has a tolerance'
  if (meaning?.is === 'partThing') return `${things[meaning.of]} of this design: part and ${meaning.of.slice(0, -1)}`
  if (meaning?.is === 'thingOfPart') return `${things[meaning.of]} of that part`
  if (kind === 'choice') return `one of ${choices?.join(', ')}`
  if (kind === 'quantity') return 'a quantity with its unit'
  return kind === 'text' || kind === 'yes or no' ? kind : kindWords(kind)
}
