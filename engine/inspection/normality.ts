/**
 * Whether readings could come from a normal distribution.
 *
 * SOURCE book: A² of Anderson and Darling with estimated mean and deviation, its correction for small samples and the four pieces of its
 * probability after R. D'Agostino and M. Stephens, Goodness-of-Fit Techniques (1986), section 4.8, from memory.
 */
import { normalCdf } from '../numbers/distributions/normal.ts'
import { sampleOf } from './sample.ts'

export interface Normality {
  /** A² with the correction for small samples. */
  readonly statistic: number
  /** How likely readings of a normal process are this far from it or farther. */
  readonly byChance: number
}

/** Fewer readings say nothing of their distribution. */
export const NORMALITY_LEAST = 8

/** @returns undefined for fewer than eight readings and for readings that are all alike */
export function normality(values: readonly number[]): Normality | undefined {
  const { count, mean, deviation } = sampleOf(values)
  if (count < NORMALITY_LEAST || deviation === 0) return undefined
  const scores = values.map((value) => (value - mean) / deviation).toSorted((one, other) => one - other)
  const sum = scores.reduce((total, score, index) => {
    const mirrored = scores[count - 1 - index]
    return total + (2 * index + 1) * (Math.log(normalCdf(score)) + Math.log(normalCdf(-mirrored)))
  }, 0)
  const statistic = (-count - sum / count) * (1 + 0.75 / count + 2.25 / (count * count))
  return { statistic, byChance: Math.min(1, Math.max(0, chanceOf(statistic))) }
}

/** Each piece from its A² on: exp(a + b A² + c A⁴), or one less that. */
function chanceOf(statistic: number): number {
  const raised = ([a, b, c]: readonly [number, number, number]): number => Math.exp(a + b * statistic + c * statistic * statistic)
  if (statistic >= 0.6) return raised([1.2937, -5.709, 0.0186])
  if (statistic >= 0.34) return raised([0.9177, -4.279, -1.38])
  if (statistic >= 0.2) return 1 - raised([-8.318, 42.796, -59.938])
  return 1 - raised([-13.436, 101.14, -223.73])
}
