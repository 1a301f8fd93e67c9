/**
 * Whether a reading shows that a size lies within its limits, though no gauge is exact.
 *
 * SOURCE standard: ISO 14253-1 (decision rules), from memory: conformity is shown where the whole interval reading ± U lies within the limits,
 * non-conformity where it lies outside of one; between them nothing is shown.
 */
import type { Limits } from './capability.ts'

/** What a gauge said: the size lies from `least` to `most`. A pin gauge gives such an interval by itself, a caliper by its uncertainty. */
export interface Found {
  readonly least: number
  readonly most: number
}

/** A reading with its expanded uncertainty (k = 2). */
export function foundBy(reading: number, uncertainty: number): Found {
  return { least: reading - uncertainty, most: reading + uncertainty }
}

/** `within` and `outside` are shown; `undecided` is not, with the gauge that was used. */
export type Conformity = 'within' | 'outside' | 'undecided'

/** What a finding shows against limits; ends count as within. */
export function conformity({ least, most }: Found, limits: Limits): Conformity {
  const low = limits.least ?? -Infinity
  const high = limits.most ?? Infinity
  if (least >= low && most <= high) return 'within'
  return most < low || least > high ? 'outside' : 'undecided'
}
