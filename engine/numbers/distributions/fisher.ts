/** Fisher's F distribution, by the beta distribution of d₁f/(d₁f + d₂). */
import { betaCdf } from './incomplete-beta.ts'

/** Share above f: how likely a ratio of variances this large is by chance. @param freedom of the upper and the lower variance */
export function fisherAbove([upper, lower]: readonly [number, number], f: number): number {
  return betaCdf({ a: lower / 2, b: upper / 2 }, lower / (lower + upper * f))
}
