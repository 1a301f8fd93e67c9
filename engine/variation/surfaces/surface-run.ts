import { limits } from '../../numbers/limits.ts'
import { type NumbersWanted, numberedIn, type SetsRun } from '../shares/sets-run.ts'
import type { Variation } from '../sources/source.ts'
import type { NoSurface } from './surface-problem.ts'
import { surfaceProblemOf } from './surface-problem-of.ts'
import { type SurfaceAsked, type SurfaceYield, surfaceYield } from './surface-yield.ts'

/** The yields of a design by surfaces; the sets that it wants may be judged anywhere. */
export function* surfaceRun(variation: Variation, asked: SurfaceAsked): SetsRun<SurfaceYield | NoSurface, never> {
  const problem = surfaceProblemOf(variation)
  if ('why' in problem) return problem
  const wanting = surfaceYield(problem, asked)
  let step = wanting.next()
  while (step.done !== true) {
    const { judged_count, meanwhile, ...sets } = step.value
    const wanted: NumbersWanted = { of: 'numbers', samples: sets.values.length, ...sets }
    const shares = yield {
      doing: 'surfaces',
      done: judged_count,
      of: limits.surfaceJudged,
      wanted,
      ...(meanwhile && { meanwhile }),
    }
    step = wanting.next(numberedIn(shares))
  }
  const { value } = step
  if (!('why' in value)) yield { doing: 'surfaces', done: value.judged_count, of: value.judged_count, surfaces: value }
  return value
}
