/**
 * A share that was counted, with the interval in which it lies.
 *
 * The 16 replicates are independent, each an unbiased count: their mean has a Student's t interval with 15 degrees of freedom, whatever the
 * points inside a replicate owe to one another (A. B. Owen, from memory). Counts of evenly spread points are not binomial, mostly much better.
 * But where hardly anything was seen of one kind, replicates that all say the same prove little: there the exact interval of a binomial count
 * (C. Clopper and E. Pearson 1934, from memory) is taken, as if the points were chance.
 */
import { betaQuantile } from '../../numbers/distributions/incomplete-beta.ts'
import { studentQuantile } from '../../numbers/distributions/student.ts'

/** Share of such intervals that hold the true share. */
export const confidence_ratio = 0.95

/** Seen fewer times than this, a kind of set gets the exact interval of a count: a count this small has itself an error of a third. */
const seenLeast = 10

/** A counted share, 0 to 1. */
export interface CountedShare {
  readonly value: number
  readonly least: number
  readonly most: number
  readonly by: 'replicates' | 'counts'
  readonly samples: number
}

/** How often something was seen in each replicate, and of how many samples. */
export interface Seen {
  readonly hits: readonly number[]
  readonly of: readonly number[]
}

/** The share with its interval; the whole from 0 to 1 before anything was counted. */
export function shareOf({ hits, of }: Seen): CountedShare {
  const samples = sum(of)
  if (samples === 0) return { value: 0, least: 0, most: 1, by: 'counts', samples }
  const seen = sum(hits)
  const value = seen / samples
  if (Math.min(seen, samples - seen) < seenLeast || of.includes(0) || of.length < 2) return byCounts(seen, samples)
  const half = tFactor(of.length) * Math.sqrt(varianceOfShares({ hits, of }) / of.length)
  return { value, least: Math.max(0, value - half), most: Math.min(1, value + half), by: 'replicates', samples }
}

/** Half of the interval of the mean of independent values of one kind. @param values at least two */
export function tHalf(values: readonly number[]): number {
  return tFactor(values.length) * Math.sqrt(varianceOf(values) / values.length)
}

function tFactor(count: number): number {
  return studentQuantile(count - 1, (1 + confidence_ratio) / 2)
}

/**
 * Variance of a replicate's share between replicates, but no less than that of half a point: replicates that agree to the point may all
 * have rounded the same way.
 */
export function varianceOfShares({ hits, of }: Seen): number {
  return Math.max(varianceOf(hits.map((count, index) => count / of[index])), halfPoint(of) ** 2)
}

/** Half of the least interval of a mean over replicates of so many samples: that of half a point in each. */
export function tHalfOfPoint(of: readonly number[]): number {
  return (tFactor(of.length) * halfPoint(of)) / Math.sqrt(of.length)
}

function halfPoint(of: readonly number[]): number {
  return 0.5 / Math.max(1, ...of)
}

/** Variance of a sample, with one less than its count below. */
export function varianceOf(values: readonly number[]): number {
  const mean = sum(values) / values.length
  return sum(values.map((value) => (value - mean) ** 2)) / (values.length - 1)
}

function byCounts(seen: number, samples: number): CountedShare {
  const outside = (1 - confidence_ratio) / 2
  const least = betaQuantile({ a: seen, b: samples - seen + 1 }, seen === 0 ? 0 : outside)
  const most = betaQuantile({ a: seen + 1, b: samples - seen }, seen === samples ? 1 : 1 - outside)
  return { value: seen / samples, least, most, by: 'counts', samples }
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0)
}
