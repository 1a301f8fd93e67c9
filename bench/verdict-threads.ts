/** A hundred thousand hold verdicts of the example, its samples drawn as well, in one thread and in workers that stand ready. */
import { Worker } from 'node:worker_threads'
import { median } from './compare.ts'
import { exampleSampler, type Range } from './example-sampler.ts'

const SETS = 100_000
const THREADS = 2
/** As many as the machine shares out at a time. */
const PIECE = 2048
const ROUNDS = 5
/** What the work may take in two threads. */
const TARGET_ms = 500

/** Times both, taking turns. @returns lines to print */
export async function verdictThreads(workerFile: URL): Promise<readonly string[]> {
  const { samples } = exampleSampler()
  const workers = Array.from({ length: THREADS }, () => new Worker(workerFile))
  const times = { one: [] as number[], several: [] as number[] }
  for (let round = 0; round <= ROUNDS; round++) {
    const begun_ms = performance.now()
    for (let from = 0; from < SETS; from += PIECE) samples(from, Math.min(SETS, from + PIECE))
    const between_ms = performance.now()
    await allIn(workers)
    // The first round warms all threads.
    if (round === 0) continue
    times.one.push(between_ms - begun_ms)
    times.several.push(performance.now() - between_ms)
  }
  await Promise.all(workers.map((worker) => worker.terminate()))
  const [one_ms, several_ms] = [median(times.one), median(times.several)]
  return [
    `${SETS} hold verdicts, samples drawn: ${one_ms.toFixed(0)} ms in one thread, ${several_ms.toFixed(0)} ms in ${THREADS} (${(one_ms / several_ms).toFixed(2)} times as fast)`,
    `That is ${several_ms <= TARGET_ms ? 'within' : 'over'} the target of ${TARGET_ms} ms in ${THREADS} threads.`,
  ]
}

async function allIn(workers: readonly Worker[]): Promise<void> {
  let next = 0
  const work = async (worker: Worker): Promise<void> => {
    while (next < SETS) {
      const range: Range = { from: next, to: Math.min(SETS, next + PIECE) }
      next = range.to
      await new Promise((resolve, reject) => {
        worker.removeAllListeners()
        worker.once('message', resolve)
        worker.once('error', reject)
        worker.postMessage(range)
      })
    }
  }
  await Promise.all(workers.map(work))
}
