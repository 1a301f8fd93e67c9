/// <reference lib="webworker" />
/** Compares bench tests with the prediction, and fits a friction pair, apart from the page. */
import { compareBench, fitFriction, readDesign } from '../../../engine/index.ts'
import type { Told } from '../../state/background-run.ts'
import type { CompareAsked, Compared } from './comparing.ts'

addEventListener('message', ({ data: { text, tests, pair } }: MessageEvent<CompareAsked>) => {
  const { value: design } = readDesign(text)
  if (design === undefined) return
  const compared = compareBench(design, tests)
  tell({ done: 1, of: pair === undefined ? 1 : 2, reached: { compared } })
  const fitted = pair === undefined ? undefined : fitFriction(design, pair, tests)
  tell({ done: 1, of: 1, reached: { compared, ...(fitted && { fitted }) }, isAll: true })
})

function tell(told: Told<Compared>): void {
  postMessage(told)
}
