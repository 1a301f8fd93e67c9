/**
 * What share of its tolerance a process uses.
 *
 *     C_p = (U − L) / 6σ      C_pk = min(U − x̄, x̄ − L) / 3σ
 *
 * with the short deviation (from the moving range) for C_p and C_pk, with that of all readings for P_p and P_pk. The interval of C_p follows from
 * chi-square; that of C_pk is A. F. Bissell's approximation (Applied Statistics 39, 1990, 331–340), from memory.
 */
import { chiSquareQuantile } from '../numbers/distributions/incomplete-gamma.ts'
import { normalQuantile } from '../numbers/distributions/normal.ts'
import { shortDeviation } from './control-limits.ts'
import type { Sample } from './sample.ts'

/** Limits of a size; one of them may be left open. */
export interface Limits {
  readonly least?: number
  readonly most?: number
}

/** A ratio with the interval in which the true one lies. */
export interface Ratio {
  readonly value: number
  readonly least: number
  readonly most: number
}

export interface Capability {
  /** Absent with a single limit. */
  readonly cp?: Ratio
  readonly cpk: Ratio
  readonly pp?: Ratio
  readonly ppk: Ratio
}

/** Share of such intervals that hold the true ratio. */
export const CONFIDENCE = 0.95

/**
 * Capability of a run of readings.
 *
 * @returns undefined for fewer than two readings, for readings that are all alike, and without any limit: nothing can be said then
 */
export function capability(sample: Sample, limits: Limits): Capability | undefined {
  const short = shortDeviation(sample)
  if (sample.count < 2 || short === 0 || (limits.least === undefined && limits.most === undefined)) return undefined
  const width = limits.least !== undefined && limits.most !== undefined ? limits.most - limits.least : undefined
  const room = Math.min((limits.most ?? Infinity) - sample.mean, sample.mean - (limits.least ?? -Infinity))
  return {
    ...(width !== undefined && {
      cp: widthRatio(width / (6 * short), sample.count),
      pp: widthRatio(width / (6 * sample.deviation), sample.count),
    }),
    cpk: sideRatio(room / (3 * short), sample.count),
    ppk: sideRatio(room / (3 * sample.deviation), sample.count),
  }
}

/** The deviation of n readings is chi-square with n − 1 degrees of freedom about the true one. */
export function widthRatio(value: number, count: number): Ratio {
  const freedom = count - 1
  const at = (share: number): number => value * Math.sqrt(chiSquareQuantile(freedom, share) / freedom)
  return { value, least: at((1 - CONFIDENCE) / 2), most: at((1 + CONFIDENCE) / 2) }
}

function sideRatio(value: number, count: number): Ratio {
  const half = normalQuantile((1 + CONFIDENCE) / 2) * Math.sqrt(1 / (9 * count) + (value * value) / (2 * (count - 1)))
  return { value, least: value - half, most: value + half }
}
