/**
 * The nearest failure: the place nearest to the middle, in the space of standard normal numbers, at which a requirement is just not met.
 * Its direction is the one in which sets fail most often, its distance β gives the rate for a straight boundary, Φ(−β).
 *
 * Steps of A. M. Hasofer and N. C. Lind 1974 with R. Rackwitz and B. Fiessler 1978 (from memory): the margin is taken as straight at the
 * present place, and the next is the foot of the middle on its zero,
 *
 *     z ← ((∇g·z − g) / |∇g|²) ∇g
 *
 * halved towards the last place where a set has no margin.
 */
import { limits } from '../../numbers/limits.ts'
import { marginIn, type SpreadProblem, type WatchedRequirement } from './spread-problem.ts'
import { effectsIn, lengthOf, type Steps } from './steps.ts'

/** Where a requirement falls short first. */
export interface FailurePoint {
  readonly requirement: number
  readonly normals: Float64Array
  /** β, deviations from the middle; negative where the middle itself falls short. */
  readonly distance: number
}

/** A search that came to nothing, with the reason. */
export interface NoFailurePoint {
  readonly requirement: number
  readonly why: string
}

/** Beyond this many deviations nothing is counted: one in a thousand million. */
const deviations_most = 6

/** Requirements whose failures are looked for: each costs some evaluations a source, and a third direction seldom tells. */
const governing_most = 3

/** Step of the normal numbers by which slopes are taken. */
const slope_step = 0.1

/** Requirements that are likely to fall short, the likeliest first: margin in the middle over its straight deviation. */
export function governingRequirements({ requirements }: SpreadProblem, steps: Steps): readonly number[] {
  return requirements
    .map((requirement, index) => ({ index, distance: straightDistance(requirement, steps) }))
    .filter(({ distance }) => Math.abs(distance) <= deviations_most)
    .sort((one, other) => Math.abs(one.distance) - Math.abs(other.distance))
    .slice(0, governing_most)
    .map(({ index }) => index)
}

function straightDistance(requirement: WatchedRequirement, steps: Steps): number {
  if (!requirement.margin) return Number.NaN
  const effects = effectsIn(steps, requirement.margin.figure)
  // A source with a side that has no value says nothing of the slope; the others may.
  return marginIn(steps.middle, requirement) / lengthOf(effects.map((effect) => (Number.isNaN(effect) ? 0 : effect)))
}

/** Looks for the nearest failure of one requirement; yields after each round. */
export function* failurePoint(problem: SpreadProblem, requirement: number): Generator<void, FailurePoint | NoFailurePoint> {
  const marginAt = (normals: Float64Array): number =>
    marginIn(problem.judge(problem.valuesAt(normals)), problem.requirements[requirement])
  const size = problem.sources.length
  let normals: Float64Array = new Float64Array(size)
  let margin = marginAt(normals)
  const middle = margin
  for (let round = 0; round < limits.failureRounds; round++) {
    const slope = slopeAt(marginAt, normals, margin)
    const square = lengthOf(slope) ** 2
    if (!(square > 0)) return { requirement, why: 'its margin does not change with any source' }
    const next = footOn({ normals, margin, slope, square })
    const reached = nearestWithMargin(marginAt, normals, next)
    if (!reached) return { requirement, why: 'no set on the way to its failure has a margin' }
    const moved = lengthOf(reached.normals.map((value, index) => value - normals[index]))
    normals = reached.normals
    margin = reached.margin
    yield
    if (moved < limits.failureMoved) break
  }
  return checked({ requirement, normals, middle }, marginAt)
}

interface Found {
  readonly requirement: number
  readonly normals: Float64Array
  /** Margin in the middle. */
  readonly middle: number
}

/** Half-way the requirement is met and half as far again it is not; else the way to its failure is not one that only falls. */
function checked(
  { requirement, normals, middle }: Found,
  marginAt: (normals: Float64Array) => number,
): FailurePoint | NoFailurePoint {
  const distance = Math.sign(middle) * lengthOf(normals)
  const [before, after] = [0.5, 1.5].map((share) => marginAt(normals.map((value) => share * value)))
  const falls = middle > 0 ? before > 0 && !(after > 0) : before < 0 && after > 0
  return falls
    ? { requirement, normals, distance }
    : { requirement, why: 'its margin does not only fall on the way to its failure' }
}

function slopeAt(marginAt: (normals: Float64Array) => number, normals: Float64Array, margin: number): Float64Array {
  const place = normals.slice()
  return normals.map((value, source) => {
    // Outwards along what grows is where failures are; a side without a margin is passed over.
    place[source] = value + slope_step
    const above = (marginAt(place) - margin) / slope_step
    place[source] = value - slope_step
    const slope = Number.isNaN(above) ? (margin - marginAt(place)) / slope_step : above
    place[source] = value
    return Number.isNaN(slope) ? 0 : slope
  })
}

interface Straight {
  readonly normals: Float64Array
  readonly margin: number
  readonly slope: Float64Array
  readonly square: number
}

function footOn({ normals, margin, slope, square }: Straight): Float64Array {
  const along = slope.reduce((sum, value, source) => sum + value * normals[source], 0)
  const share = (along - margin) / square
  return slope.map((value) => share * value)
}

function nearestWithMargin(
  marginAt: (normals: Float64Array) => number,
  from: Float64Array,
  to: Float64Array,
): { readonly normals: Float64Array; readonly margin: number } | undefined {
  for (let halving = 0; halving < limits.failureHalvings; halving++) {
    const share = 2 ** -halving
    const normals = to.map((value, source) => from[source] + share * (value - from[source]))
    const margin = marginAt(normals)
    if (!Number.isNaN(margin)) return { normals, margin }
  }
  return undefined
}
