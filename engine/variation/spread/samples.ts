/** Samples of a run as tables, made in shares that can be joined. */
import type { Verdict } from '../../figures/evaluation.ts'
import { type CloudAsked, cloudOf } from './cloud.ts'
import { changedProblem, type SetChange } from './set-change.ts'
import type { JudgedSet, SetFailure, SpreadProblem } from './spread-problem.ts'

/** Codes of verdicts in the tables. */
export const verdictCodes: readonly Verdict[] = ['met', 'short', 'undecided']

/** Codes of failures in the tables, less one; 0 is none. */
export const failureCodes: readonly SetFailure[] = ['cannot be built', 'cannot be assembled', 'does not close']

/** Judged samples of a range of numbers; plain arrays, so that a worker can hand them over. */
export interface Samples {
  readonly from: number
  /** The first number that is not in it. */
  readonly to: number
  /** Sample by sample, one a watched figure; NaN where a figure has no value. */
  readonly values: Float64Array
  /** Sample by sample, one a requirement: place in `verdictCodes`. */
  readonly verdicts: Uint8Array
  /** One a sample: 0, or one more than the place in `failureCodes`. */
  readonly failures: Uint8Array
}

/** A range of samples of a cloud. */
export interface SamplesAsked {
  readonly cloud: CloudAsked
  /** Left out: as they are. */
  readonly change?: SetChange
  readonly from: number
  readonly to: number
}

/** Judges a range of samples. The same range gives the same bytes wherever and whenever it is made. */
export function judgeSamples(problem: SpreadProblem, { cloud, change, from, to }: SamplesAsked): Samples {
  const { figures, requirements, sources } = problem
  const { fill } = cloudOf(cloud)
  const normals = new Float64Array(sources.length)
  const samples = emptySamples(problem, { from, to })
  const { judge } = change ? changedProblem(problem, change) : problem
  for (let sample = from; sample < to; sample++) {
    fill(sample, normals)
    const judged = judge(problem.valuesAt(normals))
    samples.values.set(Array.from(judged.values), (sample - from) * figures.length)
    samples.verdicts.set(codesOf(judged), (sample - from) * requirements.length)
    samples.failures[sample - from] = judged.failure === undefined ? 0 : failureCodes.indexOf(judged.failure) + 1
  }
  return samples
}

/** Tables without anything in them. */
export function emptySamples(problem: SpreadProblem, { from, to }: { readonly from: number; readonly to: number }): Samples {
  const count = to - from
  const values = new Float64Array(count * problem.figures.length)
  const verdicts = new Uint8Array(count * problem.requirements.length)
  return { from, to, values, verdicts, failures: new Uint8Array(count) }
}

function codesOf({ verdicts }: JudgedSet): number[] {
  return verdicts.map((verdict) => verdictCodes.indexOf(verdict))
}

/** Joins shares that follow one another without a gap. @throws when they do not */
export function joinSamples(shares: readonly Samples[]): Samples {
  const inOrder = shares.toSorted((one, other) => one.from - other.from)
  const [first] = inOrder
  if (inOrder.some(({ from }, index) => index > 0 && from !== inOrder[index - 1].to))
    throw new Error('samples: shares with a gap')
  const joined = <Table extends Float64Array | Uint8Array>(
    tableOf: (share: Samples) => Table,
    Kind: { new (size: number): Table },
  ) => {
    const out = new Kind(inOrder.reduce((size, share) => size + tableOf(share).length, 0))
    let at = 0
    for (const share of inOrder) {
      out.set(tableOf(share), at)
      at += tableOf(share).length
    }
    return out
  }
  return {
    from: first.from,
    to: inOrder[inOrder.length - 1].to,
    values: joined(({ values }) => values, Float64Array),
    verdicts: joined(({ verdicts }) => verdicts, Uint8Array),
    failures: joined(({ failures }) => failures, Uint8Array),
  }
}

/** One figure of all samples in order. */
export function columnOf({ values }: Samples, figure: number, figures_count: number): Float64Array {
  const count = values.length / figures_count
  return Float64Array.from({ length: count }, (_, sample) => values[sample * figures_count + figure])
}
