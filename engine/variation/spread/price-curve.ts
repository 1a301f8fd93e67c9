/**
 * What tolerances cost against the share of sets that meet everything.
 *
 *     combinations of priced tolerances ─▶ yield of each, estimated ─▶ those that no cheaper one beats, and what is drawn ─▶ judged set by set
 *
 * The estimate takes the margin of every requirement as a straight line over the sources, about the samples of the run:
 * m + Σ b_i Δx_i, with b_i fitted for the contributions. It only chooses what is judged; what is told was judged, on the samples of the run.
 */
import { limits } from '../../numbers/limits.ts'
import type { SetsRun } from '../shares/sets-run.ts'
import { momentsOf } from '../sources/law.ts'
import { advice_samples, gainOf, type YieldGain } from './advice.ts'
import { cloudOf } from './cloud.ts'
import { movesOf, type OfferedSize } from './offer.ts'
import type { PricedSize, PricedTolerance } from './priced-sizes.ts'
import { verdictCodes } from './samples.ts'
import { movedValues, type SetChange } from './set-change.ts'
import type { Spread } from './spread.ts'
import type { SpreadProblem } from './spread-problem.ts'

/** One combination of tolerances. */
export interface PricePoint {
  /** Of the priced sizes together, of one set. */
  readonly price: number
  /** One a priced size; `typed` is absent where the drawn tolerance is kept. */
  readonly choices: readonly { readonly size: OfferedSize; readonly typed?: string }[]
  /** Against what is drawn. */
  readonly gain: YieldGain
}

/** Points that are judged: each costs a count. */
const judged_most = 6

/** What is counted, and what a point has to reach. */
export interface CurveAsked {
  readonly problem: SpreadProblem
  readonly spread: Spread
  readonly target_ratio: number
}

/**
 * Judges the combinations that no cheaper one beats, and what is drawn.
 *
 * @returns the cheapest first, with what is drawn; where there are more than are judged, those whose yield is nearest to the target
 */
export function* priceCurve(asked: CurveAsked, sizes: readonly PricedSize[]): SetsRun<readonly PricePoint[], never> {
  if (sizes.length === 0) return []
  const { problem, spread } = asked
  const chosen = frontier(asked, sizes)
  const points: PricePoint[] = []
  for (const [index, { price, tolerances }] of chosen.entries()) {
    const choices = tolerances.map(({ offer }, at) => ({ size: sizes[at].size, ...(offer && { typed: offer.typed }) }))
    const change = { moves: movesWith(problem, tolerances) }
    points.push({ price, choices, gain: yield* gainOf({ problem, spread, change, index, of: chosen.length }) })
  }
  return points
}

function movesWith(problem: SpreadProblem, tolerances: readonly PricedTolerance[]): SetChange['moves'] {
  return tolerances.flatMap(({ offer }) => (offer ? movesOf(problem, offer) : []))
}

interface Combination {
  readonly price: number
  readonly tolerances: readonly PricedTolerance[]
}

interface Estimated extends Combination {
  readonly yield_ratio: number
}

function frontier(asked: CurveAsked, sizes: readonly PricedSize[]): readonly Combination[] {
  const estimate = estimator(asked)
  const cheapestFirst = combinations(sizes)
    .map((combination): Estimated => ({ ...combination, yield_ratio: estimate(combination.tolerances) }))
    .sort((one, other) => one.price - other.price || other.yield_ratio - one.yield_ratio)
  let best = -1
  const beaten = cheapestFirst.filter(({ yield_ratio }) => {
    if (yield_ratio <= best) return false
    best = yield_ratio
    return true
  })
  const away = ({ yield_ratio }: Estimated): number => Math.abs(yield_ratio - asked.target_ratio)
  const nearest = beaten.toSorted((one, other) => away(one) - away(other)).slice(0, judged_most)
  // What is drawn is judged whatever the estimate says of it: it is what the others are compared with.
  const asDrawn = cheapestFirst.filter((one) => isDrawn(one) && !nearest.includes(one))
  return [...nearest, ...asDrawn].sort((one, other) => one.price - other.price)
}

const isDrawn = ({ tolerances }: Combination): boolean => tolerances.every(({ offer }) => offer === undefined)

/** All ways to choose one tolerance a size; sizes for which there would be too many stay as drawn. */
function combinations(sizes: readonly PricedSize[]): readonly Combination[] {
  let all: readonly Combination[] = [{ price: 0, tolerances: [] }]
  for (const { tolerances } of sizes) {
    const open = all.length * tolerances.length > limits.pricedCombinations ? tolerances.slice(0, 1) : tolerances
    all = all.flatMap(({ price, tolerances: before }) =>
      open.map((tolerance) => ({ price: price + tolerance.price, tolerances: [...before, tolerance] })),
    )
  }
  return all
}

/** Estimated share of sets that meet everything with other tolerances. */
function estimator({ problem, spread }: CurveAsked): (tolerances: readonly PricedTolerance[]) => number {
  const { plan, samples, figures } = spread
  const count = Math.min(samples.failures.length, advice_samples)
  const deviations = problem.sources.map(({ law }) => momentsOf(law).deviation)
  const straight = problem.requirements.flatMap(({ margin }) => {
    const effects = margin && figures[margin.figure].contributions?.effects
    return margin && effects ? [{ ...margin, slopes: effects.map((effect, source) => effect / deviations[source]) }] : []
  })
  const { fill } = cloudOf(plan.cloud)
  const sets = Array.from({ length: count }, (_, sample) => {
    const normals = new Float64Array(problem.sources.length)
    fill(sample, normals)
    return { values: problem.valuesAt(normals), isOtherwiseMet: isOtherwiseMet({ problem, spread }, sample) }
  })
  return (tolerances) => {
    const moves = movesWith(problem, tolerances)
    const met = sets.filter(({ values, isOtherwiseMet: others }, sample) => {
      const away = movedValues(moves, values).map((value, source) => value - values[source])
      return (
        others &&
        straight.every(({ figure, bound, sense, slopes }) => {
          const before = samples.values[sample * figures.length + figure]
          return sense * (away.reduce((sum, by, source) => sum + by * slopes[source], before) - bound) >= 0
        })
      )
    })
    return met.length / Math.max(1, count)
  }
}

/** Whether a set meets all that no straight line tells anything of. */
function isOtherwiseMet({ problem, spread }: Pick<CurveAsked, 'problem' | 'spread'>, sample: number): boolean {
  const { samples, figures } = spread
  const { requirements } = problem
  return requirements.every(({ margin }, index) => {
    const isStraight = margin !== undefined && figures[margin.figure].contributions !== undefined
    return isStraight || verdictCodes[samples.verdicts[sample * requirements.length + index]] === 'met'
  })
}
