import type { DesignSpread, DesignSpreadAsked } from '../../engine/index.ts'
import { longWork } from '../state/background-run.ts'

/** A run over a design, with its text. */
export type SpreadAsked = DesignSpreadAsked & { readonly text: string }

/** The sets of the design, counted. */
export const spreadRun = longWork<SpreadAsked, DesignSpread>(
  () => new Worker(new URL('./spread-worker.ts', import.meta.url), { type: 'module' }),
)
