/// <reference lib="webworker" />
/** Reads and evaluates designs apart from the page, so that the page never waits. */
import { evaluate, readDesign } from '../../engine/index.ts'
import type { Answer, Request } from './messages.ts'

addEventListener('message', ({ data }: MessageEvent<Request>) => {
  const read = readDesign(data.text, data.name)
  const answer: Answer =
    read.value === undefined ? { id: data.id, problems: read.problems } : { id: data.id, evaluation: evaluate(read.value) }
  postMessage(answer)
})
