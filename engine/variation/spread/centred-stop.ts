/** Where a stop would have to stand for the closed finger to stand in the middle between jam and slip. */
import { rootBetween } from '../../numbers/root.ts'
import type { SetsRun } from '../shares/sets-run.ts'
import { gainOf, type YieldGain } from './advice.ts'
import type { Spread } from './spread.ts'
import type { SpreadProblem } from './spread-problem.ts'

/** A place of the stop, and what it does. */
export interface CentredStop {
  /** How far the stop is set back, mm; negative: brought forward. */
  readonly setBack_mm: number
  /** Dead-centre margin there, and what it is between, rad. */
  readonly margin_rad: number
  readonly jam_rad: number
  readonly slip_rad: number
  readonly gain: YieldGain
}

/** Farthest that a stop is moved: more is another design. */
const farthest_mm = 1

/** Step out to there. */
const step_mm = 0.125

/** A shop sets a stop to a hundredth; a tenth of that is enough. */
const width_mm = 0.001

/** @returns undefined where there is no window or no stop, or the middle is not reached within a millimetre */
export function* centredStop(problem: SpreadProblem, spread: Spread): SetsRun<CentredStop | undefined, never> {
  const { window } = problem
  if (!window?.stopSetBack) return undefined
  const { stopSetBack } = window
  const middle = new Float64Array(problem.sources.length)
  const standing = (by_mm: number): readonly number[] => {
    const moved = stopSetBack(by_mm)
    const { values } = moved.judge(moved.valuesAt(middle))
    return [window.margin, window.jam, window.slip].map((figure) => values[figure])
  }
  const offCentre = (by_mm: number): number | undefined => {
    const [margin, jam, slip] = standing(by_mm)
    const off = margin - (jam + slip) / 2
    return Number.isNaN(off) ? undefined : off
  }
  const setBack_mm = nearestZero(offCentre)
  if (setBack_mm === undefined) return undefined
  const [margin_rad, jam_rad, slip_rad] = standing(setBack_mm)
  const change = { moves: [], stopSetBack_mm: setBack_mm }
  const gain = yield* gainOf({ problem, spread, change, index: 0, of: 1 })
  return { setBack_mm, margin_rad, jam_rad, slip_rad, gain }
}

/** Set back the margin falls: the middle lies that way when the finger stands outside of it. */
function nearestZero(offCentre: (by_mm: number) => number | undefined): number | undefined {
  const now = offCentre(0)
  if (now === undefined) return undefined
  const sense = now > 0 ? 1 : -1
  let last = { by: 0, off: now }
  for (let step = 1; step * step_mm <= farthest_mm; step++) {
    const by = sense * step * step_mm
    const off = offCentre(by)
    if (off === undefined) return undefined
    if (off > 0 !== now > 0) return rootBetween(offCentre, { low: last.by, high: by, atLow: last.off, atHigh: off }, width_mm)
    last = { by, off }
  }
  return undefined
}
