/** What a yield by surfaces works on: sources, requirements, and the numbers behind them. A design is one such problem; tests have others. */
import type { Verdict } from '../../figures/evaluation.ts'
import type { Source } from '../sources/source.ts'
import type { SetFailure } from '../spread/spread-problem.ts'

/** A number that says how far a set is from falling short of a requirement: above nothing it does not, as far as this number goes. */
export interface NumberBehind {
  /** Place in the list of requirements. */
  readonly requirement: number
  /** In words. */
  readonly words: string
  /** Whether the requirement falls short wherever the number lies below nothing; else it may be met there all the same. */
  readonly isWhole: boolean
}

/** A set with its numbers. */
export interface NumberedSet {
  /** One a number behind: +∞ and −∞ where nothing could make it fall short, or meet it; NaN where it has no value, or nobody asked. */
  readonly numbers: ArrayLike<number>
  /** One a requirement; absent where some numbers only were asked for. */
  readonly verdicts?: readonly Verdict[]
  readonly failure?: SetFailure
}

/** Sources, the numbers, and the judge. */
export interface SurfaceProblem {
  readonly sources: readonly Source[]
  readonly requirements_count: number
  readonly numbers: readonly NumberBehind[]
  /**
   * @param values one a source, in its unit
   * @param places of the numbers that are asked for; all of them and the verdicts where it is left out
   */
  readonly judge: (values: ArrayLike<number>, places?: readonly number[]) => NumberedSet
}

/** Sets that have to be judged before it goes on, and how far it is. */
export interface SetsWanted {
  /** Set by set, one a source. */
  readonly values: readonly Float64Array[]
  /** Of the numbers that are asked for; all where it is left out. */
  readonly places?: readonly number[]
  /** Sets that were judged before. */
  readonly judged_count: number
  /** Work that can be done while they are judged elsewhere; it is done later where nobody does it. */
  readonly meanwhile?: () => void
}

/** Why surfaces do not serve. */
export interface NoSurface {
  readonly why: string
}
