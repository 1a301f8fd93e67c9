// Makes shares of the example's sets as they are asked for, beside the bench.
import { parentPort } from 'node:worker_threads'
import { type ShareAsked, shareMaker } from '../engine/index.ts'
import { exampleVariation } from './example-sampler.ts'

const make = shareMaker(exampleVariation())
parentPort?.on('message', (asked: ShareAsked) => parentPort?.postMessage(make(asked)))
