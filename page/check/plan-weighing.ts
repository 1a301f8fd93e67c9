import type { Matter } from '../../engine/index.ts'
import { longWork } from '../state/background-run.ts'

/** What feels each size of the plan, one a characteristic: two evaluations each, apart from the page. */
export const planWeighing = longWork<{ readonly text: string }, readonly (Matter | undefined)[]>(
  () => new Worker(new URL('./plan-worker.ts', import.meta.url), { type: 'module' }),
)
