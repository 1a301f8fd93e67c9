/**
 * Lives after Weibull: the share of pieces that outlast t is exp(−(t/η)^β).
 *
 * Without a failure, with the shape β stated: pieces that ran t₁ … t_n show, with confidence C, that at life L at least R outlast, with
 * ln R = ln(1 − C) L^β / Σ t_i^β (the success run at L, each test worth (t_i/L)^β pieces). With failures: maximum likelihood.
 */
import { rootBetween } from '../numbers/root.ts'

/** What ran without failure. */
export interface RunWithoutFailure {
  /** How long each piece ran: closings, hours. */
  readonly ran: readonly number[]
  /** Of the law, stated: 1 for failures by chance, 2 and more for wear. */
  readonly shape: number
  /** Life at which the share is asked, in the same unit. */
  readonly life: number
}

/** Share of pieces that outlasts `life`, shown with a confidence. */
export function outlastShown({ ran, shape, life }: RunWithoutFailure, confidence: number): number {
  const worth = ran.reduce((sum, time) => sum + (time / life) ** shape, 0)
  return Math.exp(Math.log(1 - confidence) / worth)
}

/** Shape and scale of lives. */
export interface WeibullFit {
  readonly shape: number
  readonly scale: number
}

/** Shapes between which the likeliest is looked for: outside nothing fails as a law of lives. */
const SHAPE_LEAST = 0.05
const SHAPE_MOST = 50
const SHAPE_WIDTH = 1e-10

/**
 * The likeliest law of lives of which some ended and some go on.
 *
 * @param failed lives that ended, at least two that differ @param running how long the others have run without failure
 * @returns undefined where no shape is likeliest
 */
export function weibullFit(failed: readonly number[], running: readonly number[]): WeibullFit | undefined {
  if (new Set(failed).size < 2) return undefined
  // Lives in shares of the longest: their powers stay between 0 and 1.
  const longest = Math.max(...failed, ...running)
  const all = [...failed, ...running].map((life) => life / longest)
  const meanLog = failed.reduce((sum, life) => sum + Math.log(life / longest), 0) / failed.length
  const slope = (shape: number): number => {
    const powers = all.map((life) => life ** shape)
    const weighted = all.reduce((sum, life, index) => sum + powers[index] * Math.log(life), 0)
    return weighted / powers.reduce((sum, power) => sum + power, 0) - 1 / shape - meanLog
  }
  const ends = { low: SHAPE_LEAST, high: SHAPE_MOST, atLow: slope(SHAPE_LEAST), atHigh: slope(SHAPE_MOST) }
  if (!(ends.atLow < 0 && ends.atHigh > 0)) return undefined
  const shape = rootBetween(slope, ends, SHAPE_WIDTH)
  if (shape === undefined) return undefined
  const sum = all.reduce((total, life) => total + life ** shape, 0)
  return { shape, scale: longest * (sum / failed.length) ** (1 / shape) }
}
