/**
 * The nearest failure: the place nearest to the middle, in the space of standard normal numbers, at which a requirement is just not met.
 * Its direction is the one in which sets fail most often, its distance β gives the rate for a straight boundary, Φ(−β).
 *
 * Steps of A. M. Hasofer and N. C. Lind 1974 with R. Rackwitz and B. Fiessler 1978 (from memory): the margin is taken as straight at the
 * present place, and the next is towards the foot of the middle on its zero,
 *
 *     z ← ((∇g·z − g) / |∇g|²) ∇g
 *
 * A margin that bends (friction comes to an end, another part begins to give first) sends that foot anywhere. So a step goes no farther than
 * two deviations, and is halved until it lowers
 *
 *     ½ |z|² + c |g|        c = 2 |z| / |∇g|, of the place or of the foot, whichever lies farther
 *
 * (Y. Zhang and A. Der Kiureghian 1995, from memory), which has its least at the nearest failure. A place where a set has no margin lowers
 * nothing.
 */
import { limits } from '../../numbers/limits.ts'
import { judgedGiven, type SetsRun } from '../shares/sets-run.ts'
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

/** Deviations that a round goes at most. */
const step_most = 2

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

/** Looks for the nearest failure of one requirement. The first slope is that of the steps, the second is taken whole. */
export function* failurePoint(
  problem: SpreadProblem,
  steps: Steps,
  requirement: number,
): SetsRun<FailurePoint | NoFailurePoint, never> {
  const watched = problem.requirements[requirement]
  const marginAt = (normals: Float64Array): number => marginIn(problem.judge(problem.valuesAt(normals)), watched)
  const middle = marginIn(steps.middle, watched)
  let slope = slopeOfSteps(watched, steps)
  let place: Place = { normals: new Float64Array(problem.sources.length), margin: middle }
  for (let round = 0; round < limits.failureRounds; round++) {
    if (round > 0)
      slope = yield* slopeAt(problem, place, {
        watched,
        before: slope,
        sources: round === 1 ? [...slope.keys()] : tellingOf(slope),
      })
    if (!(lengthOf(slope) > 0)) return { requirement, why: 'its margin does not change with any source' }
    const reached = lowered(marginAt, place, slope)
    if (!reached) break
    if (lengthOf(reached.normals) > deviations_most) return { requirement, why: 'it does not fall short within six deviations' }
    const moved = distanceOf(reached.normals, place.normals)
    place = reached
    if (moved < limits.failureMoved) break
  }
  return checked({ requirement, normals: place.normals, middle }, marginAt)
}

interface Place {
  readonly normals: Float64Array
  readonly margin: number
}

/** The first place on a step, whole or halved, that is better than where it began; undefined where none is. */
function lowered(marginAt: (normals: Float64Array) => number, from: Place, slope: Float64Array): Place | undefined {
  const foot = footOn(from, slope)
  const weight = (2 * Math.max(lengthOf(from.normals), lengthOf(foot))) / lengthOf(slope)
  const merit = ({ normals, margin }: Place): number => lengthOf(normals) ** 2 / 2 + weight * Math.abs(margin)
  const whole = Math.min(1, step_most / distanceOf(foot, from.normals))
  for (let halving = 0; halving < limits.failureHalvings; halving++) {
    const share = whole * 2 ** -halving
    const normals = foot.map((value, source) => from.normals[source] + share * (value - from.normals[source]))
    const place = { normals, margin: marginAt(normals) }
    if (merit(place) < merit(from)) return place
  }
  return undefined
}

function distanceOf(one: Float64Array, other: Float64Array): number {
  return lengthOf(one.map((value, source) => value - other[source]))
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

interface SlopeAsked {
  readonly watched: WatchedRequirement
  readonly before: Float64Array
  /** Those whose part is taken anew. */
  readonly sources: readonly number[]
}

/** Slope at a place: of some sources anew, of the others as it was. */
function* slopeAt(
  { valuesAt }: SpreadProblem,
  { normals, margin }: Place,
  { watched, before, sources }: SlopeAsked,
): SetsRun<Float64Array, never> {
  const slope = before.slice()
  const beside = (step: number) => (source: number) => valuesAt(normals.with(source, normals[source] + step))
  const above = yield* judgedGiven(sources.map(beside(slope_step)), inPassing)
  // A side without a margin is passed over.
  const blind = sources.filter((_, index) => Number.isNaN(marginIn(above[index], watched)))
  const below = yield* judgedGiven(blind.map(beside(-slope_step)), inPassing)
  for (const [index, source] of sources.entries()) slope[source] = (marginIn(above[index], watched) - margin) / slope_step
  for (const [index, source] of blind.entries()) {
    const told = (margin - marginIn(below[index], watched)) / slope_step
    slope[source] = Number.isNaN(told) ? 0 : told
  }
  return slope
}

/** Rounds are many or few: what they want says nothing of how far the search is. */
const inPassing = { doing: 'failures', each: 0 } as const

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
