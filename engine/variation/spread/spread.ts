/**
 * Will every set behave so? Worst case, root sum of squares and counted samples of one design, with what each source contributes.
 *
 *     steps of each source ─▶ root sums, corners ─▶ nearest failures ─▶ the cloud is turned towards them ─▶ samples ─▶ yields, figures
 *
 * A run says how far it is after every piece of work, may be stopped there, and gives what it has reached. Samples may be judged anywhere:
 * the numbers are the same.
 */

import { judgedIn, type SetsRun, type Share } from '../shares/sets-run.ts'
import type { Source } from '../sources/source.ts'
import { type CloudAsked, cloudOf } from './cloud.ts'
import { type Contributions, contributionsOf, inDeviations } from './contributions.ts'
import { type FailurePoint, failurePoint, governingRequirements, type NoFailurePoint } from './failure-point.ts'
import { correlationOf, type FigureSpread, figureSpread } from './figure-spread.ts'
import { type RootSumSquare, rootSums } from './root-sum-square.ts'
import { columnOf, type Samples } from './samples.ts'
import type { SpreadProblem } from './spread-problem.ts'
import { type Steps, stepsOf } from './steps.ts'
import { type WindowSpread, windowSpread } from './window-spread.ts'
import { type WorstCase, worstCases } from './worst-case.ts'
import { type Yields, yieldsOf } from './yields.ts'

/** What a run is asked for. */
export interface SpreadAsked {
  readonly seed: number
  readonly samples: number
}

/** What stands before the first sample is judged; plain data, so that workers can be handed it. */
export interface SpreadPlan {
  readonly steps: Steps
  /** One a figure. */
  readonly worst: readonly WorstCase[]
  readonly straight: readonly RootSumSquare[]
  /** Of the requirements that govern. */
  readonly failurePoints: readonly (FailurePoint | NoFailurePoint)[]
  readonly cloud: CloudAsked
}

/** One figure of a run. */
export interface SpreadFigure {
  readonly worst: WorstCase
  readonly straight: RootSumSquare
  /** Absent while no sample has a value. */
  readonly counted?: FigureSpread
  /** Absent where too few samples have a value, or it does not vary. */
  readonly contributions?: Contributions
}

/** What a run has reached. */
export interface Spread {
  readonly plan: SpreadPlan
  readonly samples: Samples
  readonly yields: Yields
  /** One a watched figure. */
  readonly figures: readonly SpreadFigure[]
  /** Absent without a hold window. */
  readonly window?: WindowSpread
  /** Figure by figure, in both senses; undefined where one does not vary. */
  readonly correlations: readonly (readonly (number | undefined)[])[]
}

/** Samples that the fits of contributions use at most: beyond it they gain nothing that could be seen. */
const fitted_samples = 4096

/** The work before the first sample. @returns the plan of a run */
export function* planSpread(problem: SpreadProblem, { seed }: Pick<SpreadAsked, 'seed'>): SetsRun<SpreadPlan, never> {
  const dimensions = problem.sources.length
  const steps = yield* stepsOf(problem)
  const failurePoints: (FailurePoint | NoFailurePoint)[] = []
  const governing = governingRequirements(problem, steps)
  for (const [index, requirement] of governing.entries()) {
    const search = failurePoint(problem, steps, requirement)
    let round = search.next([])
    while (round.done !== true) round = search.next(yield { ...round.value, done: index, of: governing.length })
    failurePoints.push(round.value)
  }
  return {
    steps,
    failurePoints,
    worst: yield* worstCases(problem, steps),
    straight: yield* rootSums(problem, steps),
    cloud: { dimensions, seed, directions: failurePoints.flatMap((point) => ('normals' in point ? [point.normals] : [])) },
  }
}

/** A whole run over a problem. */
export function* spreadOf(problem: SpreadProblem, asked: SpreadAsked): SetsRun<Spread> {
  const { samples } = asked
  const plan = yield* planSpread(problem, asked)
  const reached = (shares: readonly Share[]): Spread => spreadReached(problem, plan, judgedIn(problem, shares))
  const wanted = { of: 'sets', cloud: plan.cloud, samples } as const
  return reached(yield { doing: 'samples', done: 0, of: samples, wanted, reached })
}

/** What a plan and the samples that were judged amount to. @param samples from the first on, joined */
export function spreadReached(problem: SpreadProblem, plan: SpreadPlan, samples: Samples): Spread {
  const columns = problem.figures.map((_, figure) => columnOf(samples, figure, problem.figures.length))
  const window = windowSpread(problem, samples)
  const areWithin = problem.sources.every(staysWithin)
  const inputs = inputsOf(problem, plan.cloud, Math.min(samples.failures.length, fitted_samples))
  return {
    plan,
    samples,
    yields: yieldsOf(problem, samples),
    ...(window && { window }),
    figures: columns.map((values, figure) => {
      const counted = figureSpread(values)
      const contributions = contributionsOf({ inputs, values: values.subarray(0, inputs.length) })
      const worst = heldAgainst(plan.worst[figure], counted, areWithin)
      const { [figure]: straight } = plan.straight
      return { worst, straight, ...(counted && { counted }), ...(contributions && { contributions }) }
    }),
    correlations: columns.map((one) => columns.map((other) => correlationOf(one, other))),
  }
}

/** Whether no set lies outside of what the drawing allows, as far as this source goes. */
function staysWithin({ law }: Source): boolean {
  return law.kind === 'uniform' || law.kind === 'truncatedNormal' || law.kind === 'disc'
}

/** Corners that a counted set lies beyond bound nothing, where every set is within what the drawing allows. */
function heldAgainst(worst: WorstCase, counted: FigureSpread | undefined, areWithin: boolean): WorstCase {
  const { least, most, isBounding } = worst
  if (!isBounding || !areWithin || !counted || least.value === undefined || most.value === undefined) return worst
  const rounding = apart_ratio * Math.max(Math.abs(least.value), Math.abs(most.value))
  return { ...worst, isBounding: counted.least >= least.value - rounding && counted.most <= most.value + rounding }
}

/** Sets at a corner and sets near it are told apart no closer: a share of the figure that nobody could read. */
const apart_ratio = 1e-6

function inputsOf({ valuesAt, sources }: SpreadProblem, cloud: CloudAsked, count: number): readonly Float64Array[] {
  const { fill } = cloudOf(cloud)
  const normals = new Float64Array(cloud.dimensions)
  const values = Array.from({ length: count }, (_, sample) => {
    fill(sample, normals)
    return valuesAt(normals)
  })
  return inDeviations(sources, values)
}
