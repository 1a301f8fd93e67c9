import type { PairedLot } from '../../engine/index.ts'
import type { ReadSet } from '../../report/index.ts'
import { longWork } from '../state/background-run.ts'

/** Measured sets, and the text of the design that they are judged by. */
export interface PairAsked {
  readonly text: string
  readonly sets: readonly ReadSet[]
}

/** Which pieces of measured sets go together. */
export const pairing = longWork<PairAsked, PairedLot>(
  () => new Worker(new URL('./pair-worker.ts', import.meta.url), { type: 'module' }),
)
