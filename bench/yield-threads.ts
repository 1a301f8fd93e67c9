/** The yield of the example with all its requirements, by surfaces, to one in a thousand: in workers that stand ready. */
import { Worker } from 'node:worker_threads'
import { byMany, type Share, type SurfaceYield, surfaceRun } from '../engine/index.ts'
import { median } from './compare.ts'
import { exampleVariation } from './example-sampler.ts'

const THREADS = 2
const HALF_ratio = 0.001
/** Yields that warm the threads until the compiler is done, and those that are timed: each of another seed, and so of other sets. */
const WARMING = 20
const TIMED = 9
/** As the command line gives its workers. */
const YOUNG_MB = 64
/** What the work may take in two threads. */
const TARGET_ms = 1000

/** @returns lines to print */
export async function yieldThreads(workerFile: URL): Promise<readonly string[]> {
  const variation = exampleVariation()
  const workers = Array.from(
    { length: THREADS },
    () => new Worker(workerFile, { resourceLimits: { maxYoungGenerationSizeMb: YOUNG_MB } }),
  )
  const hands = {
    count: THREADS,
    make: (hand: number, asked: unknown): Promise<Share> =>
      new Promise((resolve, reject) => {
        workers[hand].removeAllListeners()
        workers[hand].once('message', resolve)
        workers[hand].once('error', reject)
        workers[hand].postMessage(asked)
      }),
  }
  const times_ms: number[] = []
  const told: SurfaceYield[] = []
  for (let seed = 1; seed <= WARMING + TIMED; seed++) {
    const begun_ms = performance.now()
    const run = surfaceRun(variation, { seed, half_ratio: HALF_ratio })
    const found = await byMany(run, { hands, tell: () => {}, isStopped: () => false })
    if ('why' in found) throw new Error(`the example has no yield by surfaces: ${found.why}`)
    if (seed <= WARMING) continue
    times_ms.push(performance.now() - begun_ms)
    told.push(found)
  }
  await Promise.all(workers.map((worker) => worker.terminate()))
  return linesOf(times_ms, told)
}

function linesOf(times_ms: readonly number[], told: readonly SurfaceYield[]): readonly string[] {
  const halves = told.map(({ all }) => (all.most - all.least) / 2)
  const values = told.map(({ all }) => all.value)
  const time_ms = median(times_ms)
  return [
    `${percent(Math.min(...values))} to ${percent(Math.max(...values))} over ${TIMED} seeds, each to ± ${percent(Math.max(...halves))} or closer, from ${median(told.map(({ judged_count }) => judged_count))} judged sets`,
    `in ${THREADS} threads ${time_ms.toFixed(0)} ms (${Math.min(...times_ms).toFixed(0)} to ${Math.max(...times_ms).toFixed(0)}): ${time_ms <= TARGET_ms ? 'within' : 'over'} the target of ${TARGET_ms} ms.`,
  ]
}

function percent(share: number): string {
  return `${(100 * share).toFixed(3)} %`
}
