import type { BenchTest, ComparedTest, FittedFriction } from '../../../engine/index.ts'
import { longWork } from '../../state/background-run.ts'

/** Tests that are held against a design, and the friction pair that is fitted to them. */
export interface CompareAsked {
  readonly text: string
  readonly tests: readonly BenchTest[]
  readonly pair: string | undefined
}

/** Tests beside their prediction; what they say of the friction pair where one was asked for. */
export interface Compared {
  readonly compared: readonly ComparedTest[]
  readonly fitted?: FittedFriction
}

/** Bench tests against the prediction. */
export const comparing = longWork<CompareAsked, Compared>(
  () => new Worker(new URL('./compare-worker.ts', import.meta.url), { type: 'module' }),
)
