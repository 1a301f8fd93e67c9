import type { Change } from '../design/edit/change.ts'
import type { Place } from '../design/json-places.ts'

/** One input and what a step of it does to the document. */
export interface SensitivityInput {
  readonly place: Place
  /** In words, such as `part mount hole base: x`. */
  readonly title: string
  readonly typed: string
  /** `0.1 mm`, `1°` or `10 %`. */
  readonly step: string
  readonly up: readonly Change[]
  readonly down: readonly Change[]
}
