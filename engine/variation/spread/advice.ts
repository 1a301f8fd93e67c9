/**
 * What to change: each change is judged on the same samples as the run (common random numbers), so that what differs is the change and not
 * the luck of the draw. The gain of yield is a mean over the replicates of paired differences, with its Student's t interval.
 */
import { judgedIn, type SetsRun } from '../shares/sets-run.ts'
import { replicateOf, replicates_count } from './cloud.ts'
import type { SetChange } from './set-change.ts'
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
 * Judges changes of tolerances.
 *
 * @returns those that gain most first, then what may be loosened; empty without contributions
 */
export function* toleranceAdvice(problem: SpreadProblem, spread: Spread): SetsRun<readonly SpreadChange[], never> {
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
    const moves = change.groups.flatMap(({ sources }) =>
      sources.map((source) => {
        const { nominal } = problem.sources[source]
        return { source, from: nominal, to: nominal, factor: change.factor }
      }),
    )
    const gain = yield* gainOf({ problem, spread, change: { moves }, index, of: asked.length })
    changes.push({ ...change, gain })
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

/** Another way to make or judge the samples of a run, one of several. */
export interface Otherwise {
  readonly problem: SpreadProblem
  readonly spread: Spread
  readonly change: SetChange
  readonly index: number
  readonly of: number
}

/** Gain of yield when the samples of a run are judged otherwise. */
export function* gainOf({ problem, spread, change, index, of }: Otherwise): SetsRun<YieldGain, never> {
  const { plan, samples } = spread
  const count = Math.min(samples.failures.length, advice_samples)
  const wanted = { of: 'sets', cloud: plan.cloud, change, samples: count } as const
  const shares = yield { doing: 'advice', done: index * count, of: of * count, wanted }
  const { verdicts: after } = judgedIn(problem, shares)
  return gainBetween({ before: samples.verdicts, after, count, requirements: problem.requirements.length })
}

interface Compared {
  /** Verdicts of the same samples, as tables have them. */
  readonly before: Uint8Array
  readonly after: Uint8Array
  readonly count: number
  readonly requirements: number
}

function gainBetween({ before, after, count, requirements }: Compared): YieldGain {
  const differences = new Array<number>(replicates_count).fill(0)
  const of = new Array<number>(replicates_count).fill(0)
  let met = 0
  for (let sample = 0; sample < count; sample++) {
    const was = isMet(before, sample, requirements) ? 1 : 0
    met += was
    of[replicateOf(sample)]++
    differences[replicateOf(sample)] += (isMet(after, sample, requirements) ? 1 : 0) - was
  }
  const gains = differences.map((difference, replicate) => difference / Math.max(1, of[replicate]))
  const value = differences.reduce((sum, difference) => sum + difference, 0) / Math.max(1, count)
  const half = Math.max(tHalf(gains), tHalfOfPoint(of))
  return { value, least: value - half, most: value + half, before: met / Math.max(1, count), samples: count }
}

function isMet(verdicts: Uint8Array, sample: number, requirements: number): boolean {
  return verdicts.subarray(sample * requirements, (sample + 1) * requirements).every((code) => code === 0)
}
