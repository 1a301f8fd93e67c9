import { betaQuantile } from '../numbers/distributions/incomplete-beta.ts'

/** What a run of tests without failure is to show. Both between 0 and 1. */
export interface Shown {
  readonly reliability: number
  readonly confidence: number
}

/** Pieces that have to pass, all of them, to show a reliability with a confidence: the least n with Rⁿ ≤ 1 − C. */
export function piecesToPass({ reliability, confidence }: Shown): number {
  return Math.ceil(Math.log(1 - confidence) / Math.log(reliability))
}

/**
 * The reliability that passed tests show: the lower end of the exact one-sided interval of a share (Clopper and Pearson).
 *
 * @param failed pieces that failed, of `tried`
 */
export function reliabilityShown(
  { tried, failed }: { readonly tried: number; readonly failed: number },
  confidence: number,
): number {
  return failed >= tried ? 0 : betaQuantile({ a: tried - failed, b: failed + 1 }, 1 - confidence)
}
