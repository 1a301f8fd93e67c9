/**
 * Spread of a design, with all that a door tells of it: the sets of the wearer as stated, the wearers apart, and what to change.
 */
import type { Design, Requirement } from '../../design/design.ts'
import type { Verdict } from '../../figures/evaluation.ts'
import type { ClosedSpread } from '../closed/closed-spread.ts'
import type { NotStraight } from '../closed/straight-numbers.ts'
import type { Source, Variation } from '../sources/source.ts'
import type { NoSurface } from '../surfaces/surface-problem.ts'
import type { SurfaceYield } from '../surfaces/surface-yield.ts'
import { verdictOfBoth } from '../surfaces/verdict-of-both.ts'
import type { SpreadChange } from './advice.ts'
import type { CentredStop } from './centred-stop.ts'
import type { JudgedOffer } from './judged-offer.ts'
import type { PricePoint } from './price-curve.ts'
import type { Spread, SpreadAsked } from './spread.ts'
import type { SpreadProblem, WatchedFigure } from './spread-problem.ts'
import type { Yield } from './yields.ts'

/** What a run over a design is asked for. */
export interface DesignSpreadAsked extends SpreadAsked {
  /** Share of sets that has to meet every requirement, 0 to 1. */
  readonly target_ratio: number
  /** Whether changes are judged as well, which takes longer than the count. */
  readonly advice: boolean
  /** What a shop offers instead of a drawn tolerance, as `readOffer` reads it; one that cannot be read is left out. */
  readonly offers?: readonly string[]
  /** Sets to be looked at in their closed posture alone, apart from those that are counted. */
  readonly closed?: number
}

/** Coefficients of a friction pair that the design survives, everything else as drawn. */
export interface SurvivedFriction {
  readonly pair: string
  /** Moving and at rest at both ends, and requirements that are not met just beyond; none where the search ended first. */
  readonly least: Coefficients
  readonly most: Coefficients
}

/** One end of a range of friction. */
export interface Coefficients {
  readonly moving: number
  readonly rest: number
  /** Ids of requirements. */
  readonly beyond: readonly string[]
}

/** What to change, and what the design bears. */
export interface Advice {
  /** Tolerances: those to tighten by what they gain, then those that may be loosened. */
  readonly changes: readonly SpreadChange[]
  readonly friction: readonly SurvivedFriction[]
  /** Absent where there is no window, no stop, or its middle is out of reach. */
  readonly stop?: CentredStop
  /** Combinations of priced tolerances that no cheaper one beats, and what is drawn, the cheapest first; absent where no tolerance has a price. */
  readonly prices?: readonly PricePoint[]
}

/** All that is told of the spread of a design. */
export interface DesignSpread {
  readonly design: Design
  readonly asked: DesignSpreadAsked
  /** Of the sets, in the order of contributions and changes. */
  readonly sources: readonly Source[]
  readonly figures: readonly WatchedFigure[]
  readonly requirements: readonly Requirement[]
  readonly spread: Spread
  /** Whether the yield reaches its target. */
  readonly verdict: Verdict
  /** The yields by surfaces, or why they do not serve; absent where so few sets are counted that surfaces would cost more. */
  readonly surfaces?: SurfaceYield | NoSurface
  /** Share of wearers for whom the set as drawn meets every requirement; absent where nothing varies from one wearer to the next, and before it is counted. */
  readonly wearers?: Yield
  /** Places of sizes without a tolerance: held as drawn. */
  readonly untolerated: readonly string[]
  readonly advice?: Advice
  /** One an offer; absent where none was asked about. */
  readonly offers?: readonly JudgedOffer[]
  /** Absent where nobody asked; the reason where the short way does not serve. */
  readonly closed?: ClosedSpread | NotStraight
}

/** A counted problem of a design. */
export interface CountedProblem {
  readonly problem: SpreadProblem
  readonly spread: Spread
  readonly asked: DesignSpreadAsked
  readonly surfaces?: SurfaceYield | NoSurface
}

/** What a count of a design amounts to. */
export function designSpread(
  { design, untolerated }: Variation,
  { problem, spread, asked, surfaces }: CountedProblem,
): DesignSpread {
  const { sources, figures } = problem
  const share = surfaces && 'all' in surfaces ? surfaces.all : undefined
  const verdict = verdictOfBoth(spread.yields.all, share, asked.target_ratio)
  const told = { design, asked, sources, figures, requirements: design.requirements, spread, verdict, untolerated }
  return { ...told, ...(surfaces && { surfaces }) }
}
