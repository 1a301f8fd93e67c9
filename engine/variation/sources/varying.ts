import type { Spring } from '../../design/design.ts'
import type { ZonePlace } from '../../design/other-sizes.ts'
import type { Source } from './source.ts'

/** What the values of one set do to the design: sizes by their place, and springs by their index. */
export interface SetSizes {
  readonly shifts: Map<string, number>
  readonly values: Map<string, number>
  readonly zones: Map<string, ZonePlace>
  readonly springs: Map<number, (spring: Spring) => Spring>
}

/** One thing that varies: its sources, and what their values do. Two for a place in a zone, one for everything else. */
export interface Varying {
  readonly sources: readonly Source[]
  /** @param values one a source */
  readonly put: (values: readonly number[], sizes: SetSizes) => void
}

/** Adds to what a set does at a place. */
export function addShift({ shifts }: SetSizes, place: string, by: number): void {
  shifts.set(place, (shifts.get(place) ?? 0) + by)
}
