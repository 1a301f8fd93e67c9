import type { DesignSpread, RunProgress, SurfaceYield } from '../engine/index.ts'
import { surfaceWords } from '../report/index.ts'
import type { Terminal } from './terminal.ts'

/** What a run is at. */
type Doing = RunProgress<DesignSpread>['doing'] | 'wear'

const DOING: Readonly<Record<Doing, string>> = {
  surfaces: 'surfaces through judged sets',
  steps: 'one deviation of each source',
  failures: 'the nearest failures',
  corners: 'all sizes at their limits',
  samples: 'samples',
  wearers: 'wearers',
  closed: 'sets in their closed posture alone',
  advice: 'what to change',
  wear: 'closings of its life',
}

/** How far a piece of a run is. */
export interface HowFar {
  readonly doing: Doing
  readonly done: number
  readonly of: number
  /** The yields by surfaces, in the word that they are known. */
  readonly surfaces?: SurfaceYield
}

/** Tells how far a run is, on one line that is written over; says nothing where nobody looks on. */
export function progressTeller(terminal: Terminal): {
  readonly tell: (progress: HowFar) => void
  readonly end: () => void
} {
  const { tellProgress } = terminal
  if (!tellProgress) return { tell: () => {}, end: () => {} }
  let doing = ''
  let begun = 0
  let known = ''
  return {
    tell: ({ doing: now, done, of, surfaces }) => {
      if (surfaces) known = `by surfaces ${surfaceWords(surfaces)}; `
      if (now !== doing) begun = terminal.now().getTime()
      doing = now
      const spent_s = (terminal.now().getTime() - begun) / MS_PER_S
      const left = done > 0 && spent_s > SOON_s ? `, ${leftText((spent_s / done) * (of - done))}` : ''
      tellProgress(`${known}${DOING[now]}: ${done} of ${of}${left}; Ctrl-C ends it with what was reached`)
    },
    end: () => tellProgress(''),
  }
}

const MS_PER_S = 1000
/** Before this the time that is left is a guess. */
const SOON_s = 1
const S_PER_MIN = 60

/** `about 12 s left`, `about 3 min left`. */
export function leftText(seconds: number): string {
  return `about ${seconds < S_PER_MIN ? `${Math.ceil(seconds)} s` : `${Math.ceil(seconds / S_PER_MIN)} min`} left`
}
