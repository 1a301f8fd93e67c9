/**
 * Root sum of squares: the spread of a figure that depends on its sources in a straight line.
 *
 *     σ = √(Σ b_i²),   middle ± 3 σ          b_i: change with one deviation of source i
 *
 * It is told only where the line is straight enough: what the curves add, each source by itself and all together along the steepest way, is
 * below a tenth of σ, and no set on the way is without a value or fails to close.
 */
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

/** Root sum of squares of one figure. */
export function rootSumSquare(problem: SpreadProblem, steps: Steps, figure: number): RootSumSquare {
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
  const [far, near] = [1, -1].map((sense) => alongSteepest(problem, effects, sense * deviations_told))
  const together = ((far.values[figure] + near.values[figure]) / 2 - value) / deviations_told ** 2
  if (far.failure ?? near.failure) return notLinear('a set three deviations along its steepest way does not close')
  if (!(Math.abs(together) <= bend_ratio * deviation)) return notLinear('along its steepest way it is curved, or has no value')
  return { kind: 'linear', deviation, least: value - deviations_told * deviation, most: value + deviations_told * deviation }
}

function alongSteepest(problem: SpreadProblem, effects: Float64Array, distance: number): JudgedSet {
  const length = lengthOf(effects)
  return problem.judge(problem.valuesAt(effects.map((effect) => (distance * effect) / length)))
}

function notLinear(why: string): RootSumSquare {
  return { kind: 'not linear here', why }
}

function shareWords(ratio: number): string {
  return `${Math.round(100 * ratio)} %`
}
