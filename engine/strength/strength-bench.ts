import type { Mechanism } from '../motion/mechanism.ts'
import type { Factors } from './factors.ts'
import type { Pressed } from './pressed.ts'

/** What every check of a finger's parts needs. */
export interface StrengthBench {
  readonly mechanism: Mechanism
  /** All states in which parts are pressed; the order does not matter. */
  readonly states: readonly Pressed[]
  readonly factors: Factors
}
