import { parentPort, workerData } from 'node:worker_threads'
import { readVariation, type ShareAsked, shareMaker } from '../engine/index.ts'

/** What a worker is given: the design whose samples it makes. */
export interface WorkerJob {
  readonly text: string
  readonly name: string
}

/** Makes each share that it is asked for, until the worker is ended. */
export function serveShares(): void {
  const { text, name } = workerData as WorkerJob
  const { value } = readVariation(text, name)
  if (!value) throw new Error(`spread worker: ${name} is refused here and was not before`)
  const make = shareMaker(value)
  parentPort?.on('message', (asked: ShareAsked) => parentPort?.postMessage(make(asked)))
}
