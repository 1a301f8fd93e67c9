/**
 * What the leaves of the document mean: of which kind a quantity is, which things a name points at.
 * The structure itself (which keys, of which type) says nothing of it; what edits the document needs it.
 */
import * as z from 'zod'
import type { QuantityKind } from '../numbers/quantity.ts'

/** Things of a document that other places name, by the section in which they stand. */
export type NamedSection =
  | 'parts'
  | 'pins'
  | 'stops'
  | 'springs'
  | 'loadCases'
  | 'friction'
  | 'wearRates'
  | 'materials'
  | 'coatings'
  | 'requirements'
  | 'benchTests'
/** Things of one part that other places name. */
export type PartSection = 'holes' | 'edges' | 'pads'

/** Meaning of a leaf. Texts, choices and yes-or-no say enough by their type and have none. */
export type Meaning =
  | { readonly is: 'quantity'; readonly kind: QuantityKind }
  /** A quantity of any kind: a dimension, or a tolerance on it. */
  | { readonly is: 'size' }
  /** A force or a couple, by the port that it is asked for at. */
  | { readonly is: 'amount' }
  /** In the unit of the figure that is named beside it. */
  | { readonly is: 'bound' }
  | { readonly is: 'figure' }
  /** The id of a thing of that section. */
  | { readonly is: 'name'; readonly of: NamedSection }
  /** `part.hole`, `part.edge` or `part.pad`. */
  | { readonly is: 'partThing'; readonly of: PartSection }
  /** A face of the part in which it stands, such as `holes.mcp` or `threads.rear`. */
  | { readonly is: 'face' }
  /** A size that has a tolerance, by its place or the name of a dimension: `topLinkLength`, `pins.mcp.diameter`. */
  | { readonly is: 'toleranced' }
  /** The id of a thing of the part that is named beside it. */
  | { readonly is: 'thingOfPart'; readonly of: PartSection }

/** Meanings by schema; a schema that was only described further keeps that of the one it came from. */
export const meanings = z.registry<Meaning>()

/** The same schema with a meaning; the one given keeps its own. */
export function meant<T extends z.ZodType>(schema: T, meaning: Meaning): T {
  const own = schema.clone() as T
  meanings.add(own, meaning)
  return own
}
