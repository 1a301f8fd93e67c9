import type { Gauge, Lot } from './bench.ts'

/** A lot at the bench, and who stands there. */
export interface AtBench {
  readonly name: string
  readonly who: string
  readonly lot: Lot
  readonly gauges: readonly Gauge[]
  /** Looks anew which serial numbers there are. */
  readonly again: () => void
}
