/**
 * Limits of a run of single readings: where a process that only varies by chance stays.
 *
 * The moving range of two readings is d₂ standard deviations in the mean, and the range of chance alone stays below D₄ of them.
 * SOURCE book: tables of control chart factors for samples of two, d₂ = 1.128 and D₄ = 3.267 (common to all of them), from memory;
 * both are integrals of the normal distribution: d₂ = 2/√π, D₄ = 1 + 3 √(1 − 2/π) / √(2/π).
 */
import type { Sample } from './sample.ts'

/** Mean range of two readings, in standard deviations. */
const RANGE_OF_TWO = 2 / Math.sqrt(Math.PI)
const RANGE_MOST = 1 + (3 * Math.sqrt(1 - 2 / Math.PI)) / Math.sqrt(2 / Math.PI)
const DEVIATIONS = 3

export interface ControlLimits {
  readonly least: number
  readonly most: number
  /** No step from one reading to the next should be larger. */
  readonly stepMost: number
}

/** Deviation from one piece to the next, from the moving range: what the process does over a short time. */
export function shortDeviation({ movingRange }: Sample): number {
  return movingRange / RANGE_OF_TWO
}

/** @param sample of at least two readings */
export function controlLimits(sample: Sample): ControlLimits {
  const half = DEVIATIONS * shortDeviation(sample)
  return { least: sample.mean - half, most: sample.mean + half, stepMost: RANGE_MOST * sample.movingRange }
}

/** Places in a run that chance does not explain: readings outside of the limits, and those reached by too large a step. */
export function outOfControl(values: readonly number[], { least, most, stepMost }: ControlLimits): readonly number[] {
  return values.flatMap((value, index) => {
    const step = index === 0 ? 0 : Math.abs(value - values[index - 1])
    return value < least || value > most || step > stepMost ? [index] : []
  })
}
