import { once } from '../../numbers/once.ts'
import { type ClosedSampler, closedSampler } from '../closed/closed-spread.ts'
import type { Source, Variation } from '../sources/source.ts'
import { designProblem } from '../spread/design-problem.ts'
import { judgeSamples } from '../spread/samples.ts'
import type { SpreadProblem } from '../spread/spread-problem.ts'
import type { NumberedSet } from '../surfaces/surface-problem.ts'
import { surfaceProblemOf } from '../surfaces/surface-problem-of.ts'
import type { Share, ShareAsked } from './sets-run.ts'

/** Makes shares of the samples of one design; what each kind needs is laid out when the first of it is asked for. */
export function shareMaker(variation: Variation): (asked: ShareAsked) => Share {
  const problems: Partial<Record<Source['of'], SpreadProblem>> = {}
  const problemOf = (of: Source['of']): SpreadProblem => {
    const problem = problems[of] ?? designProblem(variation, of)
    problems[of] = problem
    return problem
  }
  const samplers = new Map<number, ClosedSampler>()
  const samplerOf = (seed: number): ClosedSampler => {
    const known = samplers.get(seed)
    if (known) return known
    const sampler = closedSampler(variation, seed)
    if ('why' in sampler) throw new Error(`a share of closed sets: ${sampler.why}`)
    samplers.set(seed, sampler)
    return sampler
  }
  const numbers = once(() => surfaceProblemOf(variation))
  return ({ wanted, from, to }) => {
    if (wanted.of === 'closed') return samplerOf(wanted.seed).samples(from, to)
    if (wanted.of === 'numbers') return { from, to, numbered: numberedSets(numbers(), wanted.values, wanted.places) }
    if (wanted.of === 'given') return { from, to, given: wanted.values.map(problemOf('sets').judge) }
    return judgeSamples(problemOf(wanted.of), { ...wanted, from, to })
  }
}

function numberedSets(
  problem: ReturnType<typeof surfaceProblemOf>,
  sets: readonly Float64Array[],
  places: readonly number[] | undefined,
): readonly NumberedSet[] {
  if ('why' in problem) throw new Error(`a share of numbers: ${problem.why}`)
  return sets.map((values) => problem.judge(values, places))
}
