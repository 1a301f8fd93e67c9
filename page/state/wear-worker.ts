/// <reference lib="webworker" />
/** Works through the life of one design apart from the page. It is stopped by being ended. */
import { type Lived, lifeOf, readDesign } from '../../engine/index.ts'
import type { Told } from './background-run.ts'

addEventListener('message', ({ data }: MessageEvent<{ readonly text: string }>) => {
  const tell = (told: Told<Lived>): void => postMessage(told)
  const { value, problems } = readDesign(data.text)
  if (value === undefined) {
    tell({ done: 1, of: 1, reached: { missing: problems }, isAll: true })
    return
  }
  const run = lifeOf(value)
  let step = run.next()
  while (!step.done) {
    tell({ done: step.value.closings, of: step.value.of })
    step = run.next()
  }
  tell({ done: 1, of: 1, reached: step.value, isAll: true })
})
