import { parentPort, workerData } from 'node:worker_threads'
import { designProblem, judgeSamples, readVariation, type SpreadPlan } from '../engine/index.ts'

/** What a worker is given: the design's text, and the cloud that samples are taken from. */
export interface WorkerJob {
  readonly text: string
  readonly name: string
  readonly cloud: SpreadPlan['cloud']
}

/** Answers each range of samples that comes in with the judged samples, until the worker is ended. */
export function serveSamples(): void {
  const { text, name, cloud } = workerData as WorkerJob
  const { value } = readVariation(text, name)
  if (!value) throw new Error(`spread worker: ${name} is refused here and was not before`)
  const problem = designProblem(value)
  parentPort?.on('message', ({ from, to }: { readonly from: number; readonly to: number }) => {
    parentPort?.postMessage(judgeSamples(problem, { cloud, from, to }))
  })
}
