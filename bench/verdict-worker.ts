// Works out ranges of verdicts as they come in, beside the bench.
import { parentPort } from 'node:worker_threads'
import { exampleSampler, type Range } from './example-sampler.ts'

const { samples } = exampleSampler()
parentPort?.on('message', ({ from, to }: Range) => parentPort?.postMessage(samples(from, to).plainly_count))
