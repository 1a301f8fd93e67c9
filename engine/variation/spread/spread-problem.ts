/**
 * What the counting of samples works on: a list of sources and a judge of one set. A design is one such problem; tests have others whose
 * answers are known.
 */
import type { FigureUnit } from '../../design/figure-names.ts'
import type { Verdict } from '../../figures/evaluation.ts'
import type { Source } from '../sources/source.ts'

/** A figure that is kept of every sample. */
export interface WatchedFigure {
  readonly id: string
  readonly title: string
  readonly unit: FigureUnit
}

/** A requirement as far as counting needs it. */
export interface WatchedRequirement {
  readonly id: string
  /**
   * Figure whose value says how far a set is from falling short, by its place in the list of figures, with the bound: what a way to the
   * nearest failure is followed by. Absent for a yes or no behind which no number stands.
   */
  readonly margin?: { readonly figure: number; readonly bound: number; readonly sense: 1 | -1 }
}

/**
 * Why a set has no answer of its own. Such a set does not hold and does not let go, and is counted by itself:
 * its sizes cannot be built, its parts do not go together, or it does not come to the end of its travel as the design does.
 */
export type SetFailure = 'cannot be built' | 'cannot be assembled' | 'does not close'

/** One set, judged. */
export interface JudgedSet {
  /** One a watched figure, in its inside unit; yes is 1 and no is 0; NaN where it has no value. */
  readonly values: ArrayLike<number>
  /** One a requirement. */
  readonly verdicts: readonly Verdict[]
  readonly failure?: SetFailure
}

/** The hold window of a design: figures by their places in the list. */
export interface WatchedWindow {
  /** Dead-centre margin of the closed toggle, and the angle from which it jams. */
  readonly margin: number
  readonly jam: number
  /** Angle beyond which a kept load slips. */
  readonly slip: number
  /** In words: the load case that slips. */
  readonly loadCase: string
  /** The same problem with the stop set back by so much, so that the finger closes further; absent where no stop ends the travel. */
  readonly stopSetBack?: (by_mm: number) => SpreadProblem
}

/** Sources, what is watched, and the judge. */
export interface SpreadProblem {
  readonly sources: readonly Source[]
  readonly figures: readonly WatchedFigure[]
  readonly requirements: readonly WatchedRequirement[]
  /** Absent where no load case with a keeper is watched at a toggle. */
  readonly window?: WatchedWindow
  /** Values of the sources for independent standard normal numbers, one a source. */
  readonly valuesAt: (normals: Float64Array) => Float64Array
  /** @param values one a source, in its unit */
  readonly judge: (values: ArrayLike<number>) => JudgedSet
}

/** Margin of a requirement in a judged set, in the figure's unit, positive when met; NaN where it has none. */
export function marginIn({ values }: JudgedSet, { margin }: WatchedRequirement): number {
  return margin ? margin.sense * (values[margin.figure] - margin.bound) : Number.NaN
}
