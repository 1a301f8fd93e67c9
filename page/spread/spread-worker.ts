/// <reference lib="webworker" />
/**
 * Has the sets of one design counted apart from the page, by workers of its own, and tells every now and then what was reached. It is stopped
 * by being ended, and they with it.
 */
import { byMany, type DesignSpread, designRun, type RunProgress, readVariation } from '../../engine/index.ts'
import { surfaceWords } from '../../report/index.ts'
import type { Told } from '../state/background-run.ts'
import { shareHands } from './share-hands.ts'
import type { SpreadAsked } from './spread-run.ts'

/** Time between two tellings of what was reached: often enough to see it grow, seldom enough to cost nothing. */
const TELL_MS = 700

// What fails in a promise reaches the page by `reportError` alone.
addEventListener('message', ({ data }: MessageEvent<SpreadAsked>) => void count(data).catch(reportError))

async function count({ text, ...asked }: SpreadAsked): Promise<void> {
  const { value } = readVariation(text)
  if (value === undefined) {
    tell({ done: 1, of: 1, isAll: true })
    return
  }
  const told = await byMany(designRun(value, asked), { hands: shareHands(text), tell: teller(), isStopped: () => false })
  tell({ done: 1, of: 1, reached: told, isAll: true })
}

function tell(told: Told<DesignSpread>): void {
  postMessage(told)
}

/** Tells how far a run is, and from time to time what it has reached. */
function teller(): (progress: RunProgress<DesignSpread>) => void {
  let told_ms = performance.now()
  let known = ''
  return ({ doing, done, of, reached, surfaces }) => {
    if (surfaces) known = `By surfaces ${surfaceWords(surfaces)}; `
    const isTime = performance.now() - told_ms > TELL_MS
    if (isTime) told_ms = performance.now()
    tell({ done, of, doing: `${known}${DOING[doing]}`, ...(isTime && reached && { reached: reached() }) })
  }
}

const DOING = {
  surfaces: 'surfaces through judged sets',
  steps: 'one size after the other',
  failures: 'looking for the nearest set that falls short',
  corners: 'all sizes at their limits',
  samples: 'counting sets',
  wearers: 'counting wearers',
  closed: 'looking at closed sets',
  advice: 'trying changes',
} as const
