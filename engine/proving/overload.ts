/**
 * The probability that a load exceeds what bears it, where both scatter: with a mean strength S and a mean stress L, both normal and apart from each
 * other, S − L is normal with mean S − L and variance (c_S S)² + (c_L L)², so that with n = S / L it is below zero with probability
 *
 *   Φ(−(n − 1) / √(n² c_S² + c_L²))
 *
 * SOURCE book: Shigley, section on reliability and the normal-normal case; the form is that of any text on reliability, from memory.
 * Strengths of the tables are mostly guaranteed least ones and loads of a design mostly largest ones, so that this is more than happens.
 */
import type { Requirement } from '../design/design.ts'
import type { Evaluation, RankedStrength } from '../figures/evaluation.ts'
import { normalCdf } from '../numbers/distributions/normal.ts'

/** Standard deviations as shares of their means. */
export interface Scatter {
  readonly load_ratio: number
  readonly strength_ratio: number
}

/** How probable it is that a load exceeds what bears it, of the check where that is most. */
export interface Overload {
  readonly share_ratio: number
  /** Mean strength over mean stress there. */
  readonly strengthOverStress: number
  /** What gives way. */
  readonly words: string
}

/** @param strengthOverStress mean strength over mean stress, above 0. @returns from 0 to 1 */
export function overloadShare(strengthOverStress: number, { load_ratio, strength_ratio }: Scatter): number {
  const apart = Math.hypot(strengthOverStress * strength_ratio, load_ratio)
  return normalCdf(-(strengthOverStress - 1) / apart)
}

/** Of a requirement on margins of strength. @returns undefined for any other, and where the design states no scatter or has no such margin */
export function overloadOf({ design, strength }: Evaluation, { figure }: Requirement): Overload | undefined {
  const scatter = design.factors?.scatter
  if (!scatter || !strength || !figure.startsWith('strength.')) return undefined
  const checks = figure === LEAST ? strength.ranked : strength.ranked.filter((check) => check.figure === figure)
  const found = checks.map((check): Overload => {
    const strengthOverStress = overStress(check)
    return { share_ratio: overloadShare(strengthOverStress, scatter), strengthOverStress, words: check.words }
  })
  return found.toSorted((one, other) => one.strengthOverStress - other.strengthOverStress).at(0)
}

/** The least margin of all checks. */
const LEAST = 'strength.least'

/** A margin is strength / (factor × stress) − 1. */
function overStress({ margin, factor }: RankedStrength): number {
  return (1 + margin) * factor
}
