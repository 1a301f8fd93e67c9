/**
 * What is wrong with a typed quantity or expression, and where.
 * The caller knows the place in the document and turns it into a `Problem`.
 */
export interface Fault {
  readonly code: 'cannot be read' | 'wrong unit' | 'unknown name' | 'no such number' | 'too large'
  /** Where in the text it stands, counted from 1. */
  readonly column: number
  readonly found: string
  readonly needed: string
  readonly wayOut?: string
}

/** Either the value or the first fault that stands in its way. */
export type Read<T> = { readonly value: T; readonly fault?: never } | { readonly value?: never; readonly fault: Fault }
