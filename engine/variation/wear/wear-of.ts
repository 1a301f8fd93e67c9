/**
 * A finger over the closings of its life: what rubs takes something off holes and stops, the worn finger is moved, loaded and judged
 * again, and so on. Steps are as long as leave every dead-centre margin within 0.02°; a film that is worn through ends a step, and
 * the pair under it takes over with its friction. Where a requirement turns, the step is halved until the place is known. Derived in
 * docs/theory/wear.md.
 */
import { closingsOver } from '../../design/closings.ts'
import type { Design } from '../../design/design.ts'
import { readyFor } from '../../figures/ready-finger.ts'
import { mechanismOf } from '../../motion/mechanism.ts'
import { limits } from '../../numbers/limits.ts'
import { type Inspected, inspect, largestMarginMove, letsGo } from './inspect.ts'
import { type LoadShare, loadShares, rubbingOfUse } from './rubbing-of-use.ts'
import type { Wear, WearProgress, Worn } from './wear.ts'
import { type Diary, keepDiary } from './wear-diary.ts'
import { type WearLevel, wearMissing, wearRates } from './wear-rates.ts'
import { advanced, bared, closingsToBare, unworn, type WearRates } from './wear-state.ts'

/** How far it is looked, in stated lives: the rates are known to an order of magnitude, so a reserve of one life says something. */
const LIVES = 2

/**
 * Works through the life of a finger step by step; the caller can show how far it is, stop, or go on.
 *
 * @param design that can be moved; its document states `use` and how every friction pair wears, or it is said what is missing
 * @param level of the rates that is taken for every pair
 */
export function* wearOf(design: Design, level: WearLevel): Generator<WearProgress, Worn> {
  const mechanism = mechanismOf(design)
  const missing = wearMissing(mechanism)
  const ready = readyFor(design)
  if (missing.length > 0 || !design.use || !ready) return { missing: ready ? missing : [...missing, cannotMove] }
  const life = closingsOver(design.use)
  const bench: WearBench = {
    mechanism,
    shares: loadShares(ready),
    level,
    end: LIVES * life,
    longest: limits.wearStep_ratio * life,
  }
  const diary = keepDiary(inspect(mechanism, unworn(mechanism)))
  let step: Step = { at: diary.last, guess: bench.longest }
  let endedBy: string | undefined = GOES_ON
  for (let count = 0; count < limits.wearSteps; count++) {
    const next = oneStep(bench, step, diary)
    if ('why' in next) {
      endedBy = next.why
      break
    }
    step = next
    yield { closings: step.at.state.closings, of: bench.end }
    endedBy = endOf(bench, step.at, diary)
    if (endedBy !== GOES_ON) break
  }
  return { wear: told(bench, { diary, life, endedBy }) }
}

const cannotMove = { code: 'cannot move', place: '', found: 'a finger that cannot be moved', needed: 'one that closes and opens' }

/** Said of a finger that wears on when the steps are used up. */
const GOES_ON = `more than ${limits.wearSteps} steps`

/** Nobody uses a finger on that does not let go. */
function endOf({ end }: WearBench, { state, evaluation }: Inspected, diary: Diary): string | undefined {
  if (diary.letGoAsNew && !letsGo({ evaluation })) return 'it no longer lets go'
  if (diary.isDone()) return 'no requirement is met any more'
  return state.closings >= end ? undefined : GOES_ON
}

interface WearBench {
  /** As new. */
  readonly mechanism: ReturnType<typeof mechanismOf>
  readonly shares: readonly LoadShare[]
  readonly level: WearLevel
  /** Closings that are looked at, and the most of one step. */
  readonly end: number
  readonly longest: number
}

interface Step {
  readonly at: Inspected
  /** Closings that the next step tries first. */
  readonly guess: number
}

/** One step of wear, written into the diary; or why it cannot be made. */
function oneStep(bench: WearBench, { at, guess }: Step, diary: Diary): Step | { readonly why: string } {
  const { mechanism, level } = bench
  const ready = readyFor(at.design)
  const { rubbing, why } = ready ? rubbingOfUse(ready, bench.shares) : { why: 'the worn finger cannot be moved' }
  if (!rubbing) return { why }
  const rates = wearRates(mechanism, { state: at.state, rubbing, level })
  diary.rubs({ rubbing, rates })
  const toBare = closingsToBare(at.state, rates)
  const left = bench.end - at.state.closings
  const tried = lengthened(bench, { at, rates, closings: Math.min(guess, toBare, left, bench.longest) })
  diary.step(at, tried.next, (closings) => inspect(mechanism, advanced(at.state, rates, closings), rates))
  if (tried.closings < toBare) return { at: tried.next, guess: tried.guess }
  const { state, films } = bared(tried.next.state, { mechanism, rates })
  const bare = inspect(mechanism, state, rates)
  diary.bared(films, bare)
  return { at: bare, guess: tried.guess }
}

interface Tried {
  readonly next: Inspected
  readonly closings: number
  readonly guess: number
}

/** A step short enough for every margin. */
function lengthened(
  { mechanism }: WearBench,
  asked: { readonly at: Inspected; readonly rates: WearRates; readonly closings: number },
): Tried {
  let { closings } = asked
  for (let trial = 0; ; trial++) {
    const next = inspect(mechanism, advanced(asked.at.state, asked.rates, closings), asked.rates)
    const moved = largestMarginMove(asked.at, next) / limits.wearStep_rad
    if (moved <= 1 || trial === limits.wearTrials) return { next, closings, guess: closings * Math.min(2, AIM / moved) }
    closings *= Math.max(1 / 5, AIM / moved)
  }
}

/** Of the largest move that is allowed, so that the next trial mostly succeeds. */
const AIM = 0.9

function told(
  { mechanism, shares, level }: WearBench,
  { diary, life, endedBy }: { readonly diary: Diary; readonly life: number; readonly endedBy: string | undefined },
): Wear {
  return {
    level,
    life_closings: life,
    end_closings: diary.last.state.closings,
    ...(endedBy !== undefined && { endedBy }),
    ...diary.told(mechanism),
    loads: loadWords(mechanism.design, shares),
  }
}

const PER_CENT = 100

function loadWords({ use }: Design, shares: readonly LoadShare[]): readonly string[] {
  const words = shares.map(
    ({ loadCase, share_ratio }) => `${Number((PER_CENT * share_ratio).toPrecision(3))} % ${loadCase?.name ?? 'without load'}`,
  )
  return use?.shares
    ? words
    : [`all under the load that rubs most, as no shares are stated: ${shares[0]?.loadCase?.name ?? 'none'}`]
}
