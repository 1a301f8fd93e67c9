/**
 * A run over sets that can be worked out anywhere. It says how far it is, and stands still where it needs samples: whoever follows it has
 * them made, here or by many hands, in shares, and goes on with those.
 *
 *     run ──▶ how far it is
 *         ──▶ samples wanted ──▶ shares, made in any order and place ──▶ run
 */
import type { ClosedSamples } from '../closed/closed-samples.ts'
import type { Source } from '../sources/source.ts'
import { emptySamples, joinSamples, type Samples, type SamplesAsked } from '../spread/samples.ts'
import type { JudgedSet, SpreadProblem } from '../spread/spread-problem.ts'
import type { NumberedSet } from '../surfaces/surface-problem.ts'
import type { SurfaceYield } from '../surfaces/surface-yield.ts'

/**
 * Samples from the first up to a number: sets or wearers that are judged whole, sets that are looked at in their closed posture alone, sets whose
 * numbers are asked for, or sets that are given and judged whole.
 */
export type Wanted =
  | (Pick<SamplesAsked, 'cloud' | 'change'> & { readonly of: Source['of']; readonly samples: number })
  | { readonly of: 'closed'; readonly seed: number; readonly samples: number }
  | NumbersWanted
  | GivenWanted

/** Sets by their values, of which the numbers behind the requirements are wanted. */
export interface NumbersWanted {
  readonly of: 'numbers'
  readonly samples: number
  /** Set by set, one a source of the sets; of a part of the samples, those of that part. */
  readonly values: readonly Float64Array[]
  /** Of the numbers that are asked for; all where it is left out. */
  readonly places?: readonly number[]
}

/** Sets by their values that are judged whole. */
export interface GivenWanted {
  readonly of: 'given'
  readonly samples: number
  /** Set by set, one a source of the sets; of a part of the samples, those of that part. */
  readonly values: readonly Float64Array[]
}

/** A part of the samples that are wanted; plain data, so that a worker can be handed it. */
export interface ShareAsked {
  readonly wanted: Wanted
  readonly from: number
  /** The first number that is not in it. */
  readonly to: number
}

/** Samples that were made of a share. The same share has the same bytes wherever and whenever it is made. */
export type Share = Samples | ClosedSamples | NumberedSamples | GivenSamples

/** Sets with their numbers. */
export interface NumberedSamples {
  readonly from: number
  readonly to: number
  readonly numbered: readonly NumberedSet[]
}

/** Given sets, judged. */
export interface GivenSamples {
  readonly from: number
  readonly to: number
  readonly given: readonly JudgedSet[]
}

/** How far a run is. */
export interface HowFar {
  readonly doing: 'surfaces' | 'steps' | 'failures' | 'corners' | 'samples' | 'wearers' | 'closed' | 'advice'
  readonly done: number
  readonly of: number
  /** The yields by surfaces, in the word that they are known; they come long before a count does. */
  readonly surfaces?: SurfaceYield
}

/** Where a run stands. */
export interface RunStep<Reached> extends HowFar {
  /** Samples without which it does not go on, counted in `done` and `of`; left out for a word in passing. */
  readonly wanted?: Wanted
  /** How much of `of` one of them makes; 1 where it is left out. */
  readonly each?: number
  /** Work of the run's own that can be done while the samples are made elsewhere; it is done later where nobody does it. */
  readonly meanwhile?: () => void
  /** What has been reached with some of the wanted samples, from the first on; absent before there is anything. */
  readonly reached?: (shares: readonly Share[]) => Reached
}

/** A run; it goes on with the samples that it wanted last. */
export type SetsRun<Result, Reached = Result> = Generator<RunStep<Reached>, Result, readonly Share[]>

/** The same run, as part of a larger one that tells otherwise what was reached. */
export function* partOf<Result, Inner, Reached>(
  run: SetsRun<Result, Inner>,
  reachedOf: (step: RunStep<Inner>) => RunStep<Reached>['reached'],
): SetsRun<Result, Reached> {
  let step = run.next([])
  while (step.done !== true) {
    const { reached: _, ...told } = step.value
    const reached = reachedOf(step.value)
    step = run.next(yield { ...told, ...(reached && { reached }) })
  }
  return step.value
}

/** Of some shares those that were judged whole, joined. @throws where there is a gap between them */
export function judgedIn(problem: SpreadProblem, shares: readonly Share[]): Samples {
  const judged = shares.filter((share): share is Samples => 'verdicts' in share)
  return joinSamples([emptySamples(problem, { from: 0, to: 0 }), ...judged])
}

/** Of some shares those of closed postures alone. */
export function closedIn(shares: readonly Share[]): readonly ClosedSamples[] {
  return shares.filter((share): share is ClosedSamples => 'plainly_count' in share)
}

/** Of some shares the sets with their numbers, in order. */
export function numberedIn(shares: readonly Share[]): readonly NumberedSet[] {
  const numbered = shares.filter((share): share is NumberedSamples => 'numbered' in share)
  return numbered.toSorted((one, other) => one.from - other.from).flatMap((share) => share.numbered)
}

/** Has sets judged by their values. @returns them in order */
export function* judgedGiven(
  values: readonly Float64Array[],
  { doing, each = 1 }: Pick<RunStep<never>, 'doing' | 'each'>,
): SetsRun<readonly JudgedSet[], never> {
  const wanted = { of: 'given', samples: values.length, values } as const
  const shares = yield { doing, done: 0, of: values.length, each, wanted }
  const given = shares.filter((share): share is GivenSamples => 'given' in share)
  return given.toSorted((one, other) => one.from - other.from).flatMap((share) => share.given)
}
