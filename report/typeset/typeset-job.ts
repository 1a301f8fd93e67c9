/** A document to be typeset: one of the templates beside this file, and what it says, as data. Nothing that came from a design is ever pasted into a template. */
import type { JsonValue } from '../../engine/index.ts'

/** @see typesetting/index.ts, which makes a PDF of it */
export interface TypesetJob {
  /** Name of a template beside this file, without `.typ`. */
  readonly template: string
  /** What the template reads as `data`. */
  readonly data: JsonValue
}
