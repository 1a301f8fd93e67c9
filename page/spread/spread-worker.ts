/// <reference lib="webworker" />
/** Counts the sets of one design apart from the page and tells every now and then what it has reached. It is stopped by being ended. */
import { type DesignSpread, readVariation, spreadDesign } from '../../engine/index.ts'
import type { Told } from '../state/background-run.ts'
import type { SpreadAsked } from './spread-run.ts'

/** Time between two tellings of what was reached: often enough to see it grow, seldom enough to cost nothing. */
const TELL_MS = 700

addEventListener('message', ({ data }: MessageEvent<SpreadAsked>) => {
  const { text, ...asked } = data
  const tell = (told: Told<DesignSpread>): void => postMessage(told)
  const read = readVariation(text)
  if (read.value === undefined) {
    tell({ done: 1, of: 1, isAll: true })
    return
  }
  let told_ms = performance.now()
  const run = spreadDesign(read.value, asked)
  let step = run.next()
  while (!step.done) {
    const { doing, done, of, reached } = step.value
    const isTime = performance.now() - told_ms > TELL_MS
    if (isTime) told_ms = performance.now()
    tell({ done, of, doing: DOING[doing], ...(isTime && reached && { reached: reached() }) })
    step = run.next()
  }
  tell({ done: 1, of: 1, reached: step.value, isAll: true })
})

const DOING = {
  steps: 'one size after the other',
  failures: 'looking for the nearest set that falls short',
  samples: 'counting sets',
  advice: 'trying changes',
} as const
