import type { Matter } from '../../engine/index.ts'
import { longWork } from '../state/background-run.ts'

const weighing = () =>
  longWork<{ readonly text: string }, readonly (Matter | undefined)[]>(
    () => new Worker(new URL('./plan-worker.ts', import.meta.url), { type: 'module' }),
  )

/** What feels each size of the plan of the design as it stands, one a characteristic: two evaluations each, apart from the page. */
export const planWeighing = weighing()

/** The same for the revision that a lot was made to, where it is another. */
export const sheetWeighing = weighing()
