/**
 * What to change: each change is judged on the same samples as the run (common random numbers), so that what differs is the change and not
 * the luck of the draw. The gain of yield is a mean over the replicates of paired differences, with its Student's t interval.
 */
import { type Cloud, cloudOf, replicateOf, replicates_count } from './cloud.ts'
import { tHalf, tHalfOfPoint } from './share-interval.ts'
import type { Spread } from './spread.ts'
import type { SpreadProblem } from './spread-problem.ts'

/** Sources that belong together: a size, or both coordinates of a place. */
export interface SourceGroup {
  readonly id: string
  readonly words: string
  /** Places in the list of sources. */
  readonly sources: readonly number[]
  /** Share of the variance that it has in the requirement where it has most, 0 to 1. */
  readonly share: number
}

/** A change of the spread about what is drawn, and what it does. */
export interface SpreadChange {
  readonly kind: 'tighten' | 'loosen'
  readonly groups: readonly SourceGroup[]
  /** What the spread is multiplied by. */
  readonly factor: number
  readonly gain: YieldGain
}

/** Gain of the yield of all requirements, as a share of the sets. */
export interface YieldGain {
  readonly value: number
  readonly least: number
  readonly most: number
  /** Yield of the same samples before the change. */
  readonly before: number
  readonly samples: number
}

/** How far the advice is. */
export interface AdviceProgress {
  readonly done: number
  readonly of: number
}

/** Half a tolerance and twice a tolerance: what a shop is asked for next. */
const tighter = 0.5
const looser = 2

/** Groups that are tightened or loosened one by one; each costs a count. */
const tightened_most = 5
const loosened_most = 3

/** Changes that are judged at most. */
const changes_most = 12

/** A group below this share of every requirement's variance is loosened together with its like. */
const idle_share = 0.01

/** Samples that changes are judged on at most: paired differences need far fewer than the yield itself. */
export const advice_samples = 512

/**
 * Judges changes of tolerances; yields after each.
 *
 * @returns those that gain most first, then what may be loosened; empty without contributions
 */
export function* toleranceAdvice(problem: SpreadProblem, spread: Spread): Generator<AdviceProgress, readonly SpreadChange[]> {
  const groups = groupsOf(problem, spread)
  const idle = groups.filter(({ share }) => share < idle_share)
  const telling = groups.filter(({ share }) => share >= idle_share)
  // Where no set falls short there is nothing to be gained, and what may be loosened is the question.
  const isShort = spread.yields.all.short.value > 0
  const asked = [
    ...telling
      .slice(0, isShort ? tightened_most : 0)
      .map((group) => ({ kind: 'tighten', groups: [group], factor: tighter }) as const),
    ...(idle.length > 0 ? [{ kind: 'loosen', groups: idle, factor: looser } as const] : []),
    ...telling.slice(isShort ? -loosened_most : 0).map((group) => ({ kind: 'loosen', groups: [group], factor: looser }) as const),
  ].slice(0, changes_most)
  const changes: SpreadChange[] = []
  for (const [index, change] of asked.entries()) {
    const scaled = new Set(change.groups.flatMap(({ sources }) => sources))
    const judge = (values: Float64Array) =>
      problem.judge(
        values.map((value, source) => {
          const { nominal } = problem.sources[source]
          return scaled.has(source) ? nominal + change.factor * (value - nominal) : value
        }),
      )
    changes.push({ ...change, gain: gainOf({ problem, spread, judge }) })
    yield { done: index + 1, of: asked.length }
  }
  return changes.toSorted((one, other) => order(one) - order(other) || other.gain.value - one.gain.value)
}

function order({ kind }: SpreadChange): number {
  return kind === 'tighten' ? 0 : 1
}

/** Friction and wearers have no tolerance that a drawing could change. */
function hasTolerance({ id, of }: SpreadProblem['sources'][number]): boolean {
  return of === 'sets' && !id.startsWith('friction.')
}

/** Sources with a tolerance in groups, those with the largest share first. */
export function groupsOf({ sources, requirements }: SpreadProblem, { figures }: Spread): readonly SourceGroup[] {
  const watched = requirements.flatMap(({ margin }) => (margin ? [figures[margin.figure].contributions] : []))
  const counted = watched.filter((contributions) => contributions !== undefined)
  if (counted.length === 0) return []
  const groups = new Map<string, number[]>()
  for (const [index, source] of sources.entries()) {
    if (!hasTolerance(source)) continue
    const id = source.law.kind === 'disc' ? source.id.replace(/\.[xy]$/, '') : source.id
    groups.set(id, [...(groups.get(id) ?? []), index])
  }
  return [...groups]
    .map(([id, members]): SourceGroup => {
      const share = Math.max(...counted.map(({ shares }) => members.reduce((sum, member) => sum + shares[member], 0)))
      return { id, words: sources[members[0]].words.replace(/, [xy]$/, ''), sources: members, share }
    })
    .sort((one, other) => other.share - one.share)
}

/** A way to judge the same samples otherwise. */
export interface Otherwise {
  readonly problem: SpreadProblem
  readonly spread: Spread
  readonly judge: (values: Float64Array) => ReturnType<SpreadProblem['judge']>
}

/** Gain of yield when the samples of a run are judged otherwise. */
export function gainOf({ problem, spread, judge }: Otherwise): YieldGain {
  const { plan, samples } = spread
  const count = Math.min(samples.failures.length, advice_samples)
  const cloud = cloudOf(plan.cloud)
  const differences = new Array<number>(replicates_count).fill(0)
  const of = new Array<number>(replicates_count).fill(0)
  let before = 0
  for (let sample = 0; sample < count; sample++) {
    const was = isMet(samples.verdicts, sample, problem.requirements.length)
    const is = judge(problem.valuesAt(normalsOf(cloud, sample, problem))).verdicts.every((verdict) => verdict === 'met')
    before += was ? 1 : 0
    of[replicateOf(sample)]++
    differences[replicateOf(sample)] += (is ? 1 : 0) - (was ? 1 : 0)
  }
  const gains = differences.map((difference, replicate) => difference / Math.max(1, of[replicate]))
  const value = differences.reduce((sum, difference) => sum + difference, 0) / Math.max(1, count)
  const half = Math.max(tHalf(gains), tHalfOfPoint(of))
  return { value, least: value - half, most: value + half, before: before / Math.max(1, count), samples: count }
}

function isMet(verdicts: Uint8Array, sample: number, requirements_count: number): boolean {
  return verdicts.subarray(sample * requirements_count, (sample + 1) * requirements_count).every((code) => code === 0)
}

function normalsOf({ fill }: Cloud, sample: number, { sources }: SpreadProblem): Float64Array {
  const normals = new Float64Array(sources.length)
  fill(sample, normals)
  return normals
}
