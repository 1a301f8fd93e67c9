/**
 * Worst case: every source at the limit of what the drawing allows, on the side that moves a figure most, and the set evaluated there.
 *
 * The side of each source is that of its effect in the middle; a round zone is left in the direction of its two effects, at its rim (its
 * corners are not allowed). For a figure that rises or falls with each source alone this is the worst of all corners.
 */
import { judgedGiven, type SetsRun } from '../shares/sets-run.ts'
import type { JudgedSet, SpreadProblem } from './spread-problem.ts'
import { effectsIn, type Steps } from './steps.ts'

/** One end of the worst case. */
export interface WorstEnd {
  /** Absent where the set at that corner has no value; `failure` or the figure itself then says why. */
  readonly value?: number
  readonly failure?: JudgedSet['failure']
}

/** Least and most of a figure over what the drawing allows. */
export interface WorstCase {
  readonly least: WorstEnd
  readonly most: WorstEnd
  /**
   * Whether the middle lies between both ends, and every counted set that the drawing allows; where not, the figure does not only rise or fall, and
   * the ends bound nothing.
   */
  readonly isBounding: boolean
}

/** Has both corners of every figure judged. @returns one a figure */
export function* worstCases(problem: SpreadProblem, steps: Steps): SetsRun<readonly WorstCase[], never> {
  const corners = problem.figures.flatMap((_, figure) => {
    const effects = effectsIn(steps, figure)
    return [
      cornerTowards(
        problem,
        effects.map((effect) => -effect),
      ),
      cornerTowards(problem, effects),
    ]
  })
  const judged = yield* judgedGiven(corners, { doing: 'corners' })
  return problem.figures.map((_, figure) => {
    const [least, most] = [0, 1].map((end) => endIn(judged[2 * figure + end], figure))
    const middle = steps.middle.values[figure]
    const isBounding = (least.value ?? Number.NaN) <= middle && middle <= (most.value ?? Number.NaN)
    return { least, most, isBounding }
  })
}

function endIn({ values, failure }: JudgedSet, figure: number): WorstEnd {
  const value = values[figure]
  return { ...(!Number.isNaN(value) && { value }), ...(failure && { failure }) }
}

/** Values of the corner towards which a direction points; a source without effect stays where it is drawn. */
export function cornerTowards({ sources }: SpreadProblem, towards: ArrayLike<number>): Float64Array {
  return Float64Array.from(sources, ({ law, least, most, nominal }, source) => {
    const sense = towards[source]
    if (law.kind === 'disc') {
      const x = law.axis === 'x' ? source : source - 1
      const length = Math.hypot(towards[x], towards[x + 1])
      return length > 0 ? sense / length : nominal
    }
    return sense > 0 ? most : sense < 0 ? least : nominal
  })
}
