/** Yield: the share of sets that meet a requirement, and all of them at once; counted sample by sample, never multiplied. */
import type { Verdict } from '../../figures/evaluation.ts'
import { replicateOf, replicates_count } from './cloud.ts'
import { failureCodes, type Samples, verdictCodes } from './samples.ts'
import { type CountedShare, shareOf, varianceOfShares } from './share-interval.ts'
import type { SetFailure, SpreadProblem } from './spread-problem.ts'

/** Shares of sets that meet, fall short and cannot be decided; they sum to 1. */
export interface Yield {
  readonly met: CountedShare
  readonly short: CountedShare
  readonly undecided: CountedShare
  /**
   * Samples that chance would need for the error of this run, over its samples: variance of a binomial share over the variance between
   * replicates. Absent where hardly anything fell short, so that it cannot be told. Its own error is a factor of about two.
   */
  readonly saved_ratio?: number
}

/** Yields of one run. */
export interface Yields {
  readonly all: Yield
  /** One a requirement. */
  readonly requirements: readonly Yield[]
  /** Sets that have no answer of their own, which count as short in hold and return. */
  readonly failures: Readonly<Record<SetFailure, CountedShare>>
}

/** Counts a run. */
export function yieldsOf({ requirements }: SpreadProblem, samples: Samples): Yields {
  const { verdicts, failures, from } = samples
  const count = requirements.length
  const codeOfAll = (sample: number): number => {
    let worst = 0
    for (let index = sample * count; index < (sample + 1) * count; index++) {
      if (verdicts[index] === SHORT) return SHORT
      if (verdicts[index] > worst) worst = verdicts[index]
    }
    return worst
  }
  const counted = { from, samples_count: failures.length }
  return {
    all: yieldOf({ ...counted, codeOf: codeOfAll }),
    requirements: requirements.map((_, index) => yieldOf({ ...counted, codeOf: (sample) => verdicts[sample * count + index] })),
    failures: Object.fromEntries(
      failureCodes.map((failure, code) => [failure, seenIn(counted, (sample) => failures[sample] === code + 1)]),
    ) as Yields['failures'],
  }
}

/** Whether a target is reached: undecided while the interval holds it, or too many sets cannot be decided. */
export function targetVerdict({ met, short }: Pick<Yield, 'met' | 'short'>, target_ratio: number): Verdict {
  if (met.least >= target_ratio) return 'met'
  return 1 - short.least < target_ratio ? 'short' : 'undecided'
}

const SHORT = verdictCodes.indexOf('short')

/** Which samples are counted. */
export interface Counted {
  /** Number of the first. */
  readonly from: number
  readonly samples_count: number
}

function yieldOf(counted: Counted & { readonly codeOf: (sample: number) => number }): Yield {
  const [met, short, undecided] = verdictCodes.map((_, code) => seenIn(counted, (sample) => counted.codeOf(sample) === code))
  const saved_ratio = savedBy(counted, (sample) => counted.codeOf(sample) === SHORT)
  return { met, short, undecided, ...(saved_ratio !== undefined && { saved_ratio }) }
}

/** Counts something over the replicates of a run. */
export function seenIn(counted: Counted, isSeen: (sample: number) => boolean): CountedShare {
  return shareOf(hitsIn(counted, isSeen))
}

interface Hits {
  readonly hits: number[]
  readonly of: number[]
}

function hitsIn({ from, samples_count }: Counted, isSeen: (sample: number) => boolean): Hits {
  const hits = new Array<number>(replicates_count).fill(0)
  const of = new Array<number>(replicates_count).fill(0)
  for (let sample = 0; sample < samples_count; sample++) {
    const replicate = replicateOf(from + sample)
    of[replicate]++
    if (isSeen(sample)) hits[replicate]++
  }
  return { hits, of }
}

function savedBy(counted: Counted, isSeen: (sample: number) => boolean): number | undefined {
  const seen = hitsIn(counted, isSeen)
  const share = shareOf(seen)
  if (share.by === 'counts') return undefined
  return (share.value * (1 - share.value)) / counted.samples_count / (varianceOfShares(seen) / replicates_count)
}
