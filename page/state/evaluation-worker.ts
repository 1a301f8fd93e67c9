/// <reference lib="webworker" />
/** Reads and evaluates designs apart from the page, so that the page never waits. */
import { evaluate, readDesign } from '../../engine/index.ts'
import type { Answer, Request } from './messages.ts'
import { pictureOf } from './picture.ts'

addEventListener('message', ({ data }: MessageEvent<Request>) => {
  postMessage(answerTo(data))
})

function answerTo({ id, text, name, pictured }: Request): Answer {
  const read = readDesign(text, name)
  if (read.value === undefined) return { id, problems: read.problems }
  const evaluation = evaluate(read.value)
  const picture = pictured && pictureOf(evaluation, pictured)
  return { id, evaluation, ...(picture === undefined ? {} : { picture }) }
}
