/// <reference lib="webworker" />
/** Makes shares of the samples of one design for the worker that started it. It is told the design first, and is stopped by being ended. */
import { readVariation, type Share, type ShareAsked, shareMaker } from '../../engine/index.ts'

/** What it is sent: the text of the design, then shares that are wanted. */
export type ToShareWorker = { readonly text: string } | ShareAsked

let make: (asked: ShareAsked) => Share = () => {
  throw new Error('a share is asked for before the design is known')
}

addEventListener('message', ({ data }: MessageEvent<ToShareWorker>) => {
  if ('wanted' in data) postMessage(make(data))
  else make = makerOf(data.text)
})

function makerOf(text: string): typeof make {
  const { value } = readVariation(text)
  if (!value) throw new Error('a design is refused here that was not before')
  return shareMaker(value)
}
