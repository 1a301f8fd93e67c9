import type { Lived } from '../../engine/index.ts'
import { longWork } from './background-run.ts'

/** The life of the design as it wears: when which requirement is no longer met. */
export const wearRun = longWork<{ readonly text: string }, Lived>(
  () => new Worker(new URL('./wear-worker.ts', import.meta.url), { type: 'module' }),
)
