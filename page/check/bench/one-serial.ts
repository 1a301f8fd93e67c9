import type { Characteristic, FigureName } from '../../../engine/index.ts'
import type { AtBench } from './at-bench.ts'
import type { Serial } from './bench.ts'

/** A serial number at the bench, and what its entries are read against. */
export interface OneSerial {
  readonly about: AtBench
  readonly serial: Serial
  /** The frozen plan of its lot. */
  readonly plan: readonly Characteristic[]
  /** Forces of the design that a rig may have measured. */
  readonly figures: readonly FigureName[]
  readonly kept: () => void
}
