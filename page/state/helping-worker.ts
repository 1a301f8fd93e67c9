/// <reference lib="webworker" />
/** Tries a step of every size of one design apart from the page. It is stopped by being ended. */
import { type HelpingChanges, helpingChanges } from '../../engine/index.ts'
import type { Told } from './background-run.ts'

addEventListener('message', ({ data }: MessageEvent<{ readonly text: string }>) => {
  const tell = (told: Told<HelpingChanges>): void => postMessage(told)
  const run = helpingChanges(data.text)
  let step = run.next()
  while (!step.done) {
    tell(step.value)
    step = run.next()
  }
  tell({ done: 1, of: 1, reached: step.value, isAll: true })
})
