import { Worker } from 'node:worker_threads'
import { joinSamples, judgeSamples, type Samples, type SpreadPlan, type SpreadProblem } from '../engine/index.ts'
import type { WorkerJob } from './spread-worker.ts'

/** A count: which samples of which plan, and how it is followed and stopped. */
export interface Counting {
  readonly problem: SpreadProblem
  readonly plan: SpreadPlan
  readonly samples: number
  /** Called after each piece with the samples that are done. */
  readonly report: (done: number) => void
  /** Whether the reader wants it to end; what was judged is kept. */
  readonly isStopped: () => boolean
}

/** The text that workers read the design from, and the file that they run. */
export interface Workers {
  readonly file: URL
  readonly count: number
  readonly text: string
  readonly name: string
}

/** Samples of one piece: some tenths of a second, whole rounds of the replicates. */
const PIECE_samples = 64

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

/** Counts in workers: each asks for the next piece when it is done with one, and the numbers are those of one process. */
export async function countInWorkers(counting: Counting, workers: Workers): Promise<Samples> {
  const { problem, plan, samples, report, isStopped } = counting
  const shares = [judgeSamples(problem, { cloud: plan.cloud, from: 0, to: 0 })]
  const job: WorkerJob = { text: workers.text, name: workers.name, cloud: plan.cloud }
  let next = 0
  let done = 0
  const work = async (): Promise<void> => {
    const worker = new Worker(workers.file, { workerData: job })
    try {
      while (next < samples && !isStopped()) {
        const range = { from: next, to: Math.min(samples, next + PIECE_samples) }
        next = range.to
        const share = await answerOf(worker, range)
        shares.push(share)
        done += range.to - range.from
        report(done)
      }
    } finally {
      await worker.terminate()
    }
  }
  await Promise.all(Array.from({ length: workers.count }, work))
  return joinSamples(shares)
}

function answerOf(worker: Worker, range: { readonly from: number; readonly to: number }): Promise<Samples> {
  return new Promise((resolve, reject) => {
    worker.removeAllListeners()
    worker.once('message', resolve)
    worker.once('error', reject)
    worker.postMessage(range)
  })
}
