/**
 * Root sum of squares: the spread of a figure that depends on its sources in a straight line.
 *
 *     σ = √(Σ b_i²),   middle ± 3 σ          b_i: change with one deviation of source i
 *
 * It is told only where the line is straight enough: what the curves add, each source by itself and all together along the steepest way, is
 * below a tenth of σ, and no set on the way is without a value or fails to close.
 */
import { judgedGiven, type SetsRun } from '../shares/sets-run.ts'
import type { JudgedSet, SpreadProblem } from './spread-problem.ts'
import { bendsIn, effectsIn, lengthOf, type Steps } from './steps.ts'

/** Deviations either side that are told, as a drawing's limits are commonly read. */
const deviations_told = 3

/** Share of σ that curves may add. */
const bend_ratio = 0.1

/** The straight answer, or why there is none. */
export type RootSumSquare =
  | { readonly kind: 'linear'; readonly deviation: number; readonly least: number; readonly most: number }
  | { readonly kind: 'not linear here'; readonly why: string }

/** Root sums of squares, where two sets along the steepest way of each figure say so too. @returns one a figure */
export function* rootSums(problem: SpreadProblem, steps: Steps): SetsRun<readonly RootSumSquare[], never> {
  const before = problem.figures.map((_, figure) => straightSoFar(steps, figure))
  const ways = before.flatMap((one) => (one.kind === 'straight so far' ? [...waysAlong(problem, one.effects)] : []))
  const judged = (yield* judgedGiven(ways, { doing: 'corners' })).values()
  return before.map((one, figure): RootSumSquare => {
    if (one.kind !== 'straight so far') return one
    const [far, near] = [judged.next().value, judged.next().value]
    if (!far || !near) throw new Error('root sums: a set along the steepest way was not judged')
    return straightAlong({ value: steps.middle.values[figure], deviation: one.deviation, figure }, far, near)
  })
}

/** A figure that is straight in each source by itself. */
interface StraightSoFar {
  readonly kind: 'straight so far'
  readonly effects: Float64Array
  readonly deviation: number
}

function straightSoFar(steps: Steps, figure: number): RootSumSquare | StraightSoFar {
  const { middle } = steps
  const value = middle.values[figure]
  const effects = effectsIn(steps, figure)
  const isBroken = [middle, ...steps.up, ...steps.down].some(
    (set) => set.failure !== undefined || Number.isNaN(set.values[figure]),
  )
  if (isBroken) return notLinear('a set within one deviation of the middle has no value')
  const deviation = lengthOf(effects)
  if (deviation === 0) return { kind: 'linear', deviation: 0, least: value, most: value }
  const bends = bendsIn(steps, figure)
  const shift = bends.reduce((sum, bend) => sum + bend, 0)
  const curved = Math.sqrt(shift * shift + 2 * lengthOf(bends) ** 2)
  if (curved > bend_ratio * deviation) return notLinear(`its curve takes ${shareWords(curved / deviation)} of its deviation`)
  return { kind: 'straight so far', effects, deviation }
}

/** Values of the sets that lie as far as is told along the steepest way, up and down. */
function waysAlong({ valuesAt }: SpreadProblem, effects: Float64Array): readonly Float64Array[] {
  const length = lengthOf(effects)
  return [deviations_told, -deviations_told].map((distance) => valuesAt(effects.map((effect) => (distance * effect) / length)))
}

interface StraightFigure {
  readonly figure: number
  /** In the middle. */
  readonly value: number
  readonly deviation: number
}

function straightAlong({ value, deviation, figure }: StraightFigure, far: JudgedSet, near: JudgedSet): RootSumSquare {
  const together = ((far.values[figure] + near.values[figure]) / 2 - value) / deviations_told ** 2
  if (far.failure ?? near.failure) return notLinear('a set three deviations along its steepest way does not close')
  if (!(Math.abs(together) <= bend_ratio * deviation)) return notLinear('along its steepest way it is curved, or has no value')
  return { kind: 'linear', deviation, least: value - deviations_told * deviation, most: value + deviations_told * deviation }
}

function notLinear(why: string): RootSumSquare {
  return { kind: 'not linear here', why }
}

function shareWords(ratio: number): string {
  return `${Math.round(100 * ratio)} %`
}
