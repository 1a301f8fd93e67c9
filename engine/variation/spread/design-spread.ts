/**
 * Spread of a design, with all that a door tells of it: the sets of the wearer as stated, the wearers apart, and what to change.
 */
import type { Design, Requirement } from '../../design/design.ts'
import type { Verdict } from '../../figures/evaluation.ts'
import { type ClosedSpread, closedSpread } from '../closed/closed-spread.ts'
import type { NotStraight } from '../closed/straight-numbers.ts'
import type { Source, Variation } from '../sources/source.ts'
import { type SpreadChange, toleranceAdvice } from './advice.ts'
import { type CentredStop, centredStop } from './centred-stop.ts'
import { designProblem } from './design-problem.ts'
import { type JudgedOffer, judgedOffer } from './judged-offer.ts'
import { readOffer } from './offer.ts'
import { type PricePoint, priceCurve } from './price-curve.ts'
import { pricedSizes } from './priced-sizes.ts'
import { judgeSamples } from './samples.ts'
import { type Spread, type SpreadAsked, type SpreadPlan, spreadOf, spreadReached } from './spread.ts'
import type { SpreadProblem, WatchedFigure } from './spread-problem.ts'
import { type SurvivedEnd, survivedRange } from './survived-range.ts'
import { targetVerdict, type Yield, yieldsOf } from './yields.ts'

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
  /** Share of wearers for whom the set as drawn meets every requirement; absent where nothing varies from one wearer to the next. */
  readonly wearers?: Yield
  /** Places of sizes without a tolerance: held as drawn. */
  readonly untolerated: readonly string[]
  readonly advice?: Advice
  /** One an offer; absent where none was asked about. */
  readonly offers?: readonly JudgedOffer[]
  /** Absent where nobody asked; the reason where the short way does not serve. */
  readonly closed?: ClosedSpread | NotStraight
}

/** How far a run over a design is. */
export interface DesignSpreadProgress {
  readonly doing: 'steps' | 'failures' | 'samples' | 'advice'
  readonly done: number
  readonly of: number
  /** What was reached; absent before the first samples. */
  readonly reached?: () => DesignSpread
}

/** A whole run over a design in one thread. */
export function* spreadDesign(variation: Variation, asked: DesignSpreadAsked): Generator<DesignSpreadProgress, DesignSpread> {
  const problem = designProblem(variation)
  const counting = spreadOf(problem, asked)
  let step = counting.next()
  while (step.done !== true) {
    const { reached, ...progress } = step.value
    yield { ...progress, ...(reached && { reached: () => designSpread(variation, { problem, spread: reached(), asked }) }) }
    step = counting.next()
  }
  const counted = designSpread(variation, { problem, spread: step.value, asked })
  const offers = yield* offersFor(variation, problem, counted)
  const closed = yield* closedFor(variation, counted)
  const told = { ...counted, ...(offers.length > 0 && { offers }), ...(closed && { closed }) }
  if (!asked.advice) return told
  const advice = yield* adviceFor(variation, problem, told)
  return { ...told, advice }
}

/** A counted problem of a design. */
export interface CountedProblem {
  readonly problem: SpreadProblem
  readonly spread: Spread
  readonly asked: DesignSpreadAsked
}

/** What a count of a design amounts to, with the wearers counted as well. */
export function designSpread(variation: Variation, { problem, spread, asked }: CountedProblem): DesignSpread {
  const wearers = wearersOf(variation, asked)
  return {
    ...{ asked, spread, design: variation.design, untolerated: variation.untolerated },
    ...{ sources: problem.sources, figures: problem.figures, requirements: variation.design.requirements },
    verdict: targetVerdict(spread.yields.all, asked.target_ratio),
    ...(wearers && { wearers }),
  }
}

/** A count of a design from its plan and samples, wherever they were judged. */
export function designSpreadFrom(
  variation: Variation,
  counted: Omit<CountedProblem, 'spread'> & { readonly plan: SpreadPlan; readonly samples: Spread['samples'] },
): DesignSpread {
  const spread = spreadReached(counted.problem, counted.plan, counted.samples)
  return designSpread(variation, { ...counted, spread })
}

/** Wearers differ in a thing or two: some hundreds tell their share to a few in a hundred. */
const wearers_samples = 512

function wearersOf(variation: Variation, { seed, samples }: DesignSpreadAsked): Yield | undefined {
  const problem = designProblem(variation, 'wearers')
  if (problem.sources.length === 0) return undefined
  const cloud = { dimensions: problem.sources.length, seed }
  const judged = judgeSamples(problem, { cloud, from: 0, to: Math.min(samples, wearers_samples) })
  return yieldsOf(problem, judged).all
}

/** What shops' offers do to a counted design; yields what was counted all along. */
export function* offersFor(
  variation: Variation,
  problem: SpreadProblem,
  counted: DesignSpread,
): Generator<DesignSpreadProgress, readonly JudgedOffer[]> {
  const offers = (counted.asked.offers ?? []).flatMap((typed) => readOffer(variation, typed).value ?? [])
  const found: JudgedOffer[] = []
  for (const [index, offer] of offers.entries()) {
    yield { doing: 'advice', done: index, of: offers.length, reached: () => counted }
    found.push(judgedOffer(problem, counted.spread, offer))
  }
  return found
}

/** Looks at sets in their closed posture alone, as many as were asked for; yields what was counted all along. */
export function* closedFor(
  variation: Variation,
  counted: DesignSpread,
): Generator<DesignSpreadProgress, ClosedSpread | NotStraight | undefined> {
  const { seed, closed: samples = 0 } = counted.asked
  if (samples === 0) return undefined
  const looking = closedSpread(variation, { seed, samples })
  let step = looking.next()
  while (step.done !== true) {
    yield { doing: 'samples', done: step.value, of: samples, reached: () => counted }
    step = looking.next()
  }
  return step.value
}

/** What to change about a counted design; yields what was counted all along. */
export function* adviceFor(
  variation: Variation,
  problem: SpreadProblem,
  counted: DesignSpread,
): Generator<DesignSpreadProgress, Advice> {
  const changing = toleranceAdvice(problem, counted.spread)
  let step = changing.next()
  while (step.done !== true) {
    yield { doing: 'advice', done: step.value.done, of: step.value.of + 1, reached: () => counted }
    step = changing.next()
  }
  const stop = centredStop(problem, counted.spread)
  const prices = yield* pricesFor(variation, problem, counted)
  return {
    changes: step.value,
    friction: survivedFriction(variation, problem),
    ...(stop && { stop }),
    ...(prices.length > 0 && { prices }),
  }
}

function* pricesFor(
  variation: Variation,
  problem: SpreadProblem,
  counted: DesignSpread,
): Generator<DesignSpreadProgress, readonly PricePoint[]> {
  const { target_ratio } = counted.asked
  const judging = priceCurve({ problem, spread: counted.spread, target_ratio }, pricedSizes(variation).value ?? [])
  let step = judging.next()
  while (step.done !== true) {
    yield { doing: 'advice', ...step.value, reached: () => counted }
    step = judging.next()
  }
  return step.value
}

function survivedFriction({ design, sources, setOf }: Variation, problem: SpreadProblem): readonly SurvivedFriction[] {
  return design.frictionPairs.flatMap(({ name }, pair) => {
    const source = problem.sources.findIndex(({ id }) => id === `friction.${name}`)
    const range = source < 0 ? undefined : survivedRange(problem, source)
    if (!range) return []
    const endOf = ({ value, beyond }: SurvivedEnd): Coefficients => {
      const set = setOf(sources.map(({ id, nominal }) => (id === `friction.${name}` ? value : nominal)))
      const { moving, rest } = (set.value ?? design).frictionPairs[pair]
      return { moving: moving.likely, rest: rest.likely, beyond: beyond.map((index) => design.requirements[index].id) }
    }
    return [{ pair: name, least: endOf(range.least), most: endOf(range.most) }]
  })
}
