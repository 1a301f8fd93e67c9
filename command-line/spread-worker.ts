import { parentPort, workerData } from 'node:worker_threads'
import { closedSampler, designProblem, judgeSamples, readVariation, type SpreadPlan } from '../engine/index.ts'

/** What a worker is given: the design's text, the cloud that samples are taken from, and the seed of those in their closed posture alone. */
export interface WorkerJob {
  readonly text: string
  readonly name: string
  readonly cloud: SpreadPlan['cloud']
  readonly seed: number
}

/** Samples that a worker is asked for: judged as a whole, or in their closed posture alone. */
export interface SampleRange {
  readonly of: 'whole' | 'closed'
  readonly from: number
  readonly to: number
}

/** Answers each range of samples that comes in, until the worker is ended. */
export function serveSamples(): void {
  const { text, name, cloud, seed } = workerData as WorkerJob
  const { value } = readVariation(text, name)
  if (!value) throw new Error(`spread worker: ${name} is refused here and was not before`)
  const made: Partial<Record<SampleRange['of'], (range: SampleRange) => unknown>> = {}
  const make = {
    whole: () => {
      const problem = designProblem(value)
      return ({ from, to }: SampleRange) => judgeSamples(problem, { cloud, from, to })
    },
    closed: () => {
      const sampler = closedSampler(value, seed)
      if ('why' in sampler) throw new Error(`spread worker: ${sampler.why}`)
      return ({ from, to }: SampleRange) => sampler.samples(from, to)
    },
  }
  parentPort?.on('message', (range: SampleRange) => {
    made[range.of] ??= make[range.of]()
    parentPort?.postMessage(made[range.of]?.(range))
  })
}
