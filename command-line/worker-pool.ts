/** Workers that make samples of one design, for as many counts as are asked of them; one process would give the same numbers. */
import { Worker } from 'node:worker_threads'
import type { SampleRange, WorkerJob } from './spread-worker.ts'

/** The file that workers run, how many, and what they are given. */
export interface Workers {
  readonly file: URL
  readonly count: number
  readonly job: WorkerJob
}

/** Samples that are to be made in pieces. */
export interface Pieces {
  readonly of: SampleRange['of']
  readonly samples: number
  /** Samples of one piece. */
  readonly piece_samples: number
  /** Called after each piece with the samples that are done. */
  readonly report: (done: number) => void
  /** Whether the reader wants it to end; what was made is kept. */
  readonly isStopped: () => boolean
}

/** Workers that stand ready. */
export interface WorkerPool {
  /** Each worker asks for the next piece when it is done with one. @returns the shares, in any order, without a gap */
  readonly make: <Share>(pieces: Pieces) => Promise<readonly Share[]>
  readonly end: () => Promise<void>
}

/** Starts workers. They have to be ended, also after a failure. */
export function workerPool({ file, count, job }: Workers): WorkerPool {
  const workers = Array.from({ length: count }, () => new Worker(file, { workerData: job }))
  const make = async <Share>({ of, samples, piece_samples, report, isStopped }: Pieces): Promise<readonly Share[]> => {
    const shares: Share[] = []
    let next = 0
    let done = 0
    const work = async (worker: Worker): Promise<void> => {
      while (next < samples && !isStopped()) {
        const range: SampleRange = { of, from: next, to: Math.min(samples, next + piece_samples) }
        next = range.to
        shares.push(await answerOf<Share>(worker, range))
        done += range.to - range.from
        report(done)
      }
    }
    await Promise.all(workers.map(work))
    return shares
  }
  return {
    make,
    end: async () => {
      await Promise.all(workers.map((worker) => worker.terminate()))
    },
  }
}

function answerOf<Share>(worker: Worker, range: SampleRange): Promise<Share> {
  return new Promise((resolve, reject) => {
    worker.removeAllListeners()
    worker.once('message', resolve)
    worker.once('error', reject)
    worker.postMessage(range)
  })
}
