/**
 * A fault of the design, returned as a value: where it stands, what was found, what is needed.
 *
 * `code` is a few words that name the kind of fault and never change; sentences are made in `sentence.ts` only.
 */
export interface Problem {
  readonly code: string
  /** Place in the document, e.g. `parts.middle.holes.pip.x`; empty for the whole file. */
  readonly place: string
  /** Line of the file, from 1, where the place or the thing it is missing in stands; absent when it was read from no text. */
  readonly line?: number
  readonly found: string
  readonly needed: string
  /** A way out, when one is known. */
  readonly wayOut?: string
}

/** Either the value, or every problem that stands in its way. */
export type Checked<T> =
  | { readonly value: T; readonly problems?: never }
  | { readonly value?: never; readonly problems: readonly Problem[] }
