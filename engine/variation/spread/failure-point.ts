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

/** Share of the square of a slope that is not taken anew: it turns a direction by a tenth of a radian at most. */
const idle_ratio = 0.01

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
  return marginIn(steps.middle, requirement) / lengthOf(slopeOfSteps(requirement, steps))
}

/** Looks for the nearest failure of one requirement; yields after each round. The first slope is that of the steps. */
export function* failurePoint(
  problem: SpreadProblem,
  steps: Steps,
  requirement: number,
): Generator<void, FailurePoint | NoFailurePoint> {
  const watched = problem.requirements[requirement]
  const marginAt = (normals: Float64Array): number => marginIn(problem.judge(problem.valuesAt(normals)), watched)
  const middle = marginIn(steps.middle, watched)
  const first = slopeOfSteps(watched, steps)
  let place: Place = { normals: new Float64Array(problem.sources.length), margin: middle }
  for (let round = 0; round < limits.failureRounds; round++) {
    const slope = round === 0 ? first : slopeAt(marginAt, place, first)
    if (!(lengthOf(slope) > 0)) return { requirement, why: 'its margin does not change with any source' }
    const foot = footOn(place, slope)
    if (lengthOf(foot) > deviations_most) return { requirement, why: 'it does not fall short within six deviations' }
    const reached = nearestWithMargin(marginAt, place.normals, foot)
    if (!reached) return { requirement, why: 'no set on the way to its failure has a margin' }
    const moved = lengthOf(reached.normals.map((value, index) => value - place.normals[index]))
    place = reached
    yield
    if (moved < limits.failureMoved) break
  }
  return checked({ requirement, normals: place.normals, middle }, marginAt)
}

interface Place {
  readonly normals: Float64Array
  readonly margin: number
}

function slopeOfSteps({ margin }: WatchedRequirement, steps: Steps): Float64Array {
  if (!margin) return new Float64Array(steps.up.length)
  // A source with a side that has no value says nothing of the slope; the others may.
  return effectsIn(steps, margin.figure).map((effect) => (Number.isNaN(effect) ? 0 : margin.sense * effect))
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

/** Slope at a place: of the sources that told most of the first slope anew, of the others as it was. */
function slopeAt(marginAt: (normals: Float64Array) => number, { normals, margin }: Place, first: Float64Array): Float64Array {
  const slope = first.slice()
  const place = normals.slice()
  for (const source of tellingOf(first)) {
    const value = normals[source]
    place[source] = value + slope_step
    const above = (marginAt(place) - margin) / slope_step
    place[source] = value - slope_step
    // A side without a margin is passed over.
    const told = Number.isNaN(above) ? (margin - marginAt(place)) / slope_step : above
    place[source] = value
    slope[source] = Number.isNaN(told) ? 0 : told
  }
  return slope
}

/** Sources that make up all but a hundredth of the square of a slope. */
function tellingOf(slope: Float64Array): readonly number[] {
  const inOrder = [...slope.keys()].sort((one, other) => Math.abs(slope[other]) - Math.abs(slope[one]))
  let left = lengthOf(slope) ** 2
  const least = idle_ratio * left
  return inOrder.filter((source) => {
    const isTelling = left > least
    left -= slope[source] ** 2
    return isTelling
  })
}

function footOn({ normals, margin }: Place, slope: Float64Array): Float64Array {
  const along = slope.reduce((sum, value, source) => sum + value * normals[source], 0)
  const share = (along - margin) / lengthOf(slope) ** 2
  return slope.map((value) => share * value)
}

function nearestWithMargin(marginAt: (normals: Float64Array) => number, from: Float64Array, to: Float64Array): Place | undefined {
  for (let halving = 0; halving < limits.failureHalvings; halving++) {
    const share = 2 ** -halving
    const normals = to.map((value, source) => from[source] + share * (value - from[source]))
    const margin = marginAt(normals)
    if (!Number.isNaN(margin)) return { normals, margin }
  }
  return undefined
}
