import type { HelpingChanges } from '../../engine/index.ts'
import { longWork } from './background-run.ts'

/** Which change helps most against breaking: a step of every size, each with the whole finger worked out. */
export const helpingRun = longWork<{ readonly text: string }, HelpingChanges>(
  () => new Worker(new URL('./helping-worker.ts', import.meta.url), { type: 'module' }),
)
