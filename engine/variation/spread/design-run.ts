/** The run over a design: its sets are counted, then what shops offer, sets in their closed posture alone, and what to change. */
import { limits } from '../../numbers/limits.ts'
import { type ClosedSpread, closedSpread } from '../closed/closed-spread.ts'
import type { NotStraight } from '../closed/straight-numbers.ts'
import { byOne } from '../shares/by-one.ts'
import type { RunProgress } from '../shares/pieces.ts'
import { judgedIn, partOf, type SetsRun } from '../shares/sets-run.ts'
import { shareMaker } from '../shares/share-maker.ts'
import type { Variation } from '../sources/source.ts'
import type { NoSurface } from '../surfaces/surface-problem.ts'
import { surfaceRun } from '../surfaces/surface-run.ts'
import type { SurfaceYield } from '../surfaces/surface-yield.ts'
import { toleranceAdvice } from './advice.ts'
import { centredStop } from './centred-stop.ts'
import { designProblem } from './design-problem.ts'
import {
  type Advice,
  type Coefficients,
  type DesignSpread,
  type DesignSpreadAsked,
  designSpread,
  type SurvivedFriction,
} from './design-spread.ts'
import { judgedOffers } from './judged-offer.ts'
import { readOffer } from './offer.ts'
import { priceCurve } from './price-curve.ts'
import { pricedSizes } from './priced-sizes.ts'
import { type Spread, spreadOf } from './spread.ts'
import type { SpreadProblem } from './spread-problem.ts'
import { type SurvivedEnd, survivedRange } from './survived-range.ts'
import { type Yield, yieldsOf } from './yields.ts'

/** A whole run over a design in one thread. */
export function spreadDesign(variation: Variation, asked: DesignSpreadAsked): Generator<RunProgress<DesignSpread>, DesignSpread> {
  return byOne(designRun(variation, asked), shareMaker(variation))
}

/** A whole run over a design; the samples that it wants are those of a `shareMaker` of the same design. */
export function* designRun(variation: Variation, asked: DesignSpreadAsked): SetsRun<DesignSpread> {
  const problem = designProblem(variation)
  const surfaces = yield* partOf(surfacesFor(variation, asked), () => undefined)
  const toldOf = (spread: Spread): DesignSpread =>
    designSpread(variation, { problem, spread, asked, ...(surfaces && { surfaces }) })
  const spread = yield* partOf(spreadOf(problem, asked), ({ reached }) => reached && ((shares) => toldOf(reached(shares))))
  const plainly = toldOf(spread)
  const wearers = yield* partOf(wearersFor(variation, asked), () => () => plainly)
  const counted = { ...plainly, ...(wearers && { wearers }) }
  const typed = (asked.offers ?? []).flatMap((offer) => readOffer(variation, offer).value ?? [])
  const offers = yield* partOf(judgedOffers(problem, spread, typed), () => () => counted)
  const offered = { ...counted, ...(offers.length > 0 && { offers }) }
  const closed = yield* partOf(closedFor(variation, asked), ({ reached }) => (shares) => ({
    ...offered,
    ...(reached && shares.length > 0 && { closed: reached(shares) }),
  }))
  const told = { ...offered, ...(closed && { closed }) }
  if (!asked.advice) return told
  const advice = yield* partOf(adviceFor(variation, problem, told), () => () => told)
  return { ...told, advice }
}

/** Surfaces are made where at least as many sets are counted as they may have judged for themselves. */
function* surfacesFor(
  variation: Variation,
  { seed, samples }: DesignSpreadAsked,
): SetsRun<SurfaceYield | NoSurface | undefined, never> {
  if (samples < limits.surfaceJudged || variation.design.requirements.length === 0) return undefined
  return yield* surfaceRun(variation, { seed, half_ratio: surfaces_half_ratio })
}

/** Half of the interval of a yield by surfaces: one set in a thousand. */
const surfaces_half_ratio = 0.001

/** Wearers differ in a thing or two: some hundreds tell their share to a few in a hundred. */
const wearers_samples = 512

function* wearersFor(variation: Variation, { seed, samples: sets }: DesignSpreadAsked): SetsRun<Yield | undefined, never> {
  const problem = designProblem(variation, 'wearers')
  if (problem.sources.length === 0) return undefined
  const samples = Math.min(sets, wearers_samples)
  const wanted = { of: 'wearers', cloud: { dimensions: problem.sources.length, seed }, samples } as const
  const shares = yield { doing: 'wearers', done: 0, of: samples, wanted }
  return yieldsOf(problem, judgedIn(problem, shares)).all
}

/** Sets in their closed posture alone, as many as were asked for. */
function* closedFor(
  variation: Variation,
  { seed, closed = 0 }: DesignSpreadAsked,
): SetsRun<ClosedSpread | NotStraight | undefined, ClosedSpread | NotStraight> {
  return closed > 0 ? yield* closedSpread(variation, { seed, samples: closed }) : undefined
}

/** What to change about a counted design. */
function* adviceFor(variation: Variation, problem: SpreadProblem, { spread, asked }: DesignSpread): SetsRun<Advice, never> {
  const changes = yield* toleranceAdvice(problem, spread)
  const stop = yield* centredStop(problem, spread)
  const { target_ratio } = asked
  const prices = yield* priceCurve({ problem, spread, target_ratio }, pricedSizes(variation).value ?? [])
  return {
    changes,
    friction: survivedFriction(variation, problem),
    ...(stop && { stop }),
    ...(prices.length > 0 && { prices }),
  }
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
