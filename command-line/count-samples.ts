import {
  type ClosedSamples,
  type ClosedSpread,
  closedSampler,
  closedSpreadOf,
  joinSamples,
  judgeSamples,
  type NotStraight,
  type Samples,
  type SpreadPlan,
  type SpreadProblem,
  type Variation,
} from '../engine/index.ts'
import type { WorkerPool } from './worker-pool.ts'

/** How a count is followed and stopped. */
interface Followed {
  readonly samples: number
  /** Called after each piece with the samples that are done. */
  readonly report: (done: number) => void
  /** Whether the reader wants it to end; what was judged is kept. */
  readonly isStopped: () => boolean
}

/** A count: which samples of which plan. */
export interface Counting extends Followed {
  readonly problem: SpreadProblem
  readonly plan: SpreadPlan
}

/** Sets to be looked at in their closed posture alone. */
export interface ClosedCounting extends Followed {
  readonly variation: Variation
  readonly seed: number
}

/** Samples of one piece: some tenths of a second, whole rounds of the replicates. */
const PIECE_samples = 64
const CLOSED_PIECE_samples = 8192

/** Counts in this process, and lets others of its work through between the pieces. */
export async function countHere({ problem, plan, samples, report, isStopped }: Counting): Promise<Samples> {
  const shares = [judgeSamples(problem, { cloud: plan.cloud, from: 0, to: 0 })]
  for (let from = 0; from < samples && !isStopped(); from += PIECE_samples) {
    const to = Math.min(samples, from + PIECE_samples)
    shares.push(judgeSamples(problem, { cloud: plan.cloud, from, to }))
    report(to)
    await new Promise((resolve) => setImmediate(resolve))
  }
  return joinSamples(shares)
}

/** Counts in workers; the numbers are those of one process. */
export async function countInWorkers({ problem, plan, ...followed }: Counting, pool: WorkerPool): Promise<Samples> {
  const none = judgeSamples(problem, { cloud: plan.cloud, from: 0, to: 0 })
  const shares = await pool.make<Samples>({ ...followed, of: 'whole', piece_samples: PIECE_samples })
  return joinSamples([none, ...shares])
}

/** Looks at sets in their closed posture alone in workers; the numbers are those of one process. @returns undefined where it was stopped at once */
export async function countClosed(
  { variation, seed, ...followed }: ClosedCounting,
  pool: WorkerPool,
): Promise<ClosedSpread | NotStraight | undefined> {
  const sampler = closedSampler(variation, seed)
  if ('why' in sampler) return sampler
  const shares = await pool.make<ClosedSamples>({ ...followed, of: 'closed', piece_samples: CLOSED_PIECE_samples })
  return shares.length > 0 ? closedSpreadOf(variation, shares) : undefined
}
