/** Test support: problems of a few sources whose answers are known by other roads. */
import { normalCdf } from '../../../numbers/distributions/normal.ts'
import { byOne } from '../../shares/by-one.ts'
import type { SetsRun, Share, ShareAsked } from '../../shares/sets-run.ts'
import type { Law, Source } from '../../sources/source.ts'
import { judgeSamples } from '../samples.ts'
import type { JudgedSet, SpreadProblem } from '../spread-problem.ts'

/** A source of one law; `least` and `most` are the limits of the law, or three deviations. */
export function sourceOf(id: string, law: Law): Source {
  const [least, most] = limitsOf(law)
  return { id, words: id, unit: 'mm', nominal: (least + most) / 2, law, least, most, of: 'sets' }
}

function limitsOf(law: Law): readonly [number, number] {
  if (law.kind === 'normal') return [law.mean - 3 * law.deviation, law.mean + 3 * law.deviation]
  if (law.kind === 'uniform') return [law.least, law.most]
  if (law.kind === 'disc') return [-1, 1]
  throw new Error(`no small problem has a law of the kind ${law.kind}`)
}

/** What is asked of the one figure of a small problem. */
export interface Small {
  readonly sources: readonly Source[]
  /** NaN: the set cannot be assembled. */
  readonly figure: (values: readonly number[]) => number
  readonly atLeast: number
}

/** A problem with one figure and one requirement on it. */
export function smallProblem({ sources, figure, atLeast }: Small): SpreadProblem {
  const judge = (values: ArrayLike<number>): JudgedSet => {
    const value = figure(Array.from(values))
    if (Number.isNaN(value)) return { values: [value], verdicts: ['short'], failure: 'cannot be assembled' }
    return { values: [value], verdicts: [value >= atLeast ? 'met' : 'short'] }
  }
  return {
    sources,
    figures: [{ id: 'figure', title: 'Figure', unit: '1' }],
    requirements: [{ id: 'enough', margin: { figure: 0, bound: atLeast, sense: 1 } }],
    valuesAt: (normals) => normals.map((normal, index) => valueUnder(sources[index].law, normal)),
    judge,
  }
}

function valueUnder(law: Law, normal: number): number {
  if (law.kind === 'normal') return law.mean + law.deviation * normal
  if (law.kind === 'uniform') return law.least + (law.most - law.least) * normalCdf(normal)
  throw new Error(`no small problem has a law of the kind ${law.kind}`)
}

/** Sources that are standard normal numbers themselves. */
export function standardNormals(count: number): readonly Source[] {
  return Array.from({ length: count }, (_, index) => sourceOf(`z${index}`, { kind: 'normal', mean: 0, deviation: 1 }))
}

/** A run over a small problem to its end. */
export function counted<Result>(problem: SpreadProblem, run: SetsRun<Result, unknown>): Result {
  return finished(byOne(run, judgeOf(problem)))
}

/** Shares of a small problem, which has no closed posture, and no numbers but its figure. */
export function judgeOf(problem: SpreadProblem): (asked: ShareAsked) => Share {
  return ({ wanted, from, to }) => {
    if (wanted.of === 'given') return { from, to, given: wanted.values.map(problem.judge) }
    if (wanted.of === 'closed' || wanted.of === 'numbers') throw new Error(`a small problem has nothing of the kind ${wanted.of}`)
    return judgeSamples(problem, { ...wanted, from, to })
  }
}

/** A generator run to its end. */
export function finished<Result>(run: Generator<unknown, Result>): Result {
  let step = run.next()
  while (step.done !== true) step = run.next()
  return step.value
}
