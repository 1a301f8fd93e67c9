import { Worker } from 'node:worker_threads'
import { type Hands, type Share, type ShareAsked, shareMaker, type Variation } from '../engine/index.ts'
import type { WorkerJob } from './spread-worker.ts'

/** Hands that have to be let go, also after a failure. */
export interface HeldHands extends Hands {
  readonly end: () => Promise<void>
}

/** The file that workers run, how many, and what they are given. */
export interface Workers {
  readonly file: URL
  readonly count: number
  readonly job: WorkerJob
}

/** Room for what an evaluation makes and drops: with less, a worker spends a tenth of its time on clearing it. */
const YOUNG_MB = 64

/** Starts workers. */
export function workerHands({ file, count, job }: Workers): HeldHands {
  const workers = Array.from(
    { length: count },
    () => new Worker(file, { workerData: job, resourceLimits: { maxYoungGenerationSizeMb: YOUNG_MB } }),
  )
  return {
    count,
    make: (hand, asked) => answerOf(workers[hand], asked),
    end: async () => {
      await Promise.all(workers.map((worker) => worker.terminate()))
    },
  }
}

/** This process in place of workers. */
export function ownHands(variation: Variation): HeldHands {
  const make = shareMaker(variation)
  return {
    count: 1,
    make: async (_, asked) => make(asked),
    end: async () => {},
  }
}

function answerOf(worker: Worker, asked: ShareAsked): Promise<Share> {
  return new Promise((resolve, reject) => {
    worker.removeAllListeners()
    worker.once('message', resolve)
    worker.once('error', reject)
    worker.postMessage(asked)
  })
}
