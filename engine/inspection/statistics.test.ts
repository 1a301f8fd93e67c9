import { describe, expect, it } from 'vitest'
import { fisherAbove } from '../numbers/distributions/fisher.ts'
import { chiSquareCdf, chiSquareQuantile } from '../numbers/distributions/incomplete-gamma.ts'
import { capability, widthRatio } from './capability.ts'
import { controlLimits, outOfControl } from './control-limits.ts'
import { conformity, foundBy } from './guard-band.ts'
import { normality } from './normality.ts'
import { neighbourCorrelation, sampleOf } from './sample.ts'
import { piecesToPass, reliabilityShown } from './success-run.ts'
import { oneSidedFactor, twoSidedFactor } from './tolerance-factor.ts'

describe('readings', () => {
  const swinging = (base: number, step: number) =>
    Array.from({ length: 1001 }, (_, index) => (index === 0 ? base : index % 2 === 1 ? base - step : base + step))

  it.each([
    // SOURCE dataset: NIST StRD, NumAcc1 to NumAcc4 (headers of the files, read): mean, deviation, lag-1 correlation, exact
    { name: 'NumAcc1', values: [10000001, 10000003, 10000002], mean: 10000002, deviation: 1, r: -0.5, digits: 14 },
    { name: 'NumAcc2', values: swinging(1.2, 0.1), mean: 1.2, deviation: 0.1, r: -0.999, digits: 13 },
    { name: 'NumAcc3', values: swinging(1000000.2, 0.1), mean: 1000000.2, deviation: 0.1, r: -0.999, digits: 9 },
    // The decimals of the file in binary give 0.1000000005588 by themselves.
    { name: 'NumAcc4', values: swinging(10000000.2, 0.1), mean: 10000000.2, deviation: 0.1, r: -0.999, digits: 8 },
  ])('$name', ({ values, mean, deviation, r, digits }) => {
    const sample = sampleOf(values)
    expect(Math.abs(sample.mean / mean - 1)).toBeLessThan(1e-15)
    expect(Math.abs(sample.deviation / deviation - 1)).toBeLessThan(10 ** -digits)
    expect(neighbourCorrelation(values)).toBeCloseTo(r, 7)
  })
})

describe('chi-square and F', () => {
  it.each([
    // SOURCE other-method (scipy 1.17 chi2.ppf, from memory of printed tables: 95 % points)
    [1, 3.841458820694124],
    [10, 18.307038053275146],
    [30, 43.77297182574219],
  ])('with %d degrees of freedom', (freedom, most) => {
    expect(chiSquareQuantile(freedom, 0.95)).toBeCloseTo(most, 9)
    expect(chiSquareCdf(freedom, most)).toBeCloseTo(0.95, 12)
  })

  it('chi-square with two degrees of freedom is the exponential', () => {
    // SOURCE hand: 1 − exp(−x/2)
    for (const x of [0.01, 1, 5, 40]) expect(chiSquareCdf(2, x)).toBeCloseTo(1 - Math.exp(-x / 2), 13)
  })

  it('F of the interaction of a gauge study', () => {
    // SOURCE other-method (recomputed for the study of Houf and Burman): F(18, 60) = 5.273 by chance 5e-7
    expect(fisherAbove([18, 60], 5.273)).toBeGreaterThan(4e-7)
    expect(fisherAbove([18, 60], 5.273)).toBeLessThan(6e-7)
  })
})

describe('capability', () => {
  it('is the room over three deviations', () => {
    // SOURCE book: NIST/SEMATECH e-Handbook 6.1.6, limits 8 and 20, mean 16, s 2: Cp 1.0, Cpk 0.6667; from memory
    const readings = [16 - Math.SQRT2, 16 + Math.SQRT2]
    const sample = { ...sampleOf(readings), mean: 16, deviation: 2, movingRange: (2 * 2) / Math.sqrt(Math.PI) }
    const found = capability(sample, { least: 8, most: 20 })
    expect(found?.cp?.value).toBeCloseTo(1, 12)
    expect(found?.cpk.value).toBeCloseTo(2 / 3, 12)
    expect(found?.ppk.value).toBeCloseTo(2 / 3, 12)
  })

  it('of 20 readings lies in a wide interval', () => {
    // SOURCE book: Montgomery, Introduction to Statistical Quality Control: limits 38 and 62, s 1.75, n 20: 2.29, 1.57 to 3.01; from memory
    const { value, least, most } = widthRatio(24 / (6 * 1.75), 20)
    expect([value, least, most].map((ratio) => Number(ratio.toFixed(4)))).toEqual([2.2857, 1.5649, 3.0056])
  })

  it('is not spoken of for one reading, for readings that are all alike, or without limits', () => {
    // SOURCE property
    expect(capability(sampleOf([1]), { most: 2 })).toBeUndefined()
    expect(capability(sampleOf([1, 1, 1]), { most: 2 })).toBeUndefined()
    expect(capability(sampleOf([1, 2, 3]), {})).toBeUndefined()
  })
})

describe('a run of readings', () => {
  it('has limits by its moving range', () => {
    // SOURCE book: factors 2.660 and 3.267 of individuals and moving range, common to control chart tables, from memory
    const sample = sampleOf([10, 12, 11, 13, 9])
    const found = controlLimits(sample)
    expect(sample.movingRange).toBe(2.25)
    expect((found.most - sample.mean) / sample.movingRange).toBeCloseTo(2.66, 2)
    expect(found.stepMost / sample.movingRange).toBeCloseTo(3.267, 3)
  })

  it('shows where something else than chance was at work', () => {
    const quiet = Array.from({ length: 20 }, (_, index) => 5 + (index % 2 === 0 ? 0.01 : -0.01))
    // SOURCE hand: one reading ten steps off, reached and left by steps of its own
    const values = quiet.with(12, 5.2)
    expect(outOfControl(values, controlLimits(sampleOf(quiet)))).toEqual([12, 13])
  })
})

describe('tolerance factors', () => {
  it.each([
    // SOURCE book: NBS Handbook 91 table A-7, from memory; recomputed from the noncentral t: 2.9110, 2.2198, 3.9811, 1.8740
    [10, 0.95, 0.95, 2.911],
    [30, 0.95, 0.95, 2.2198],
    [10, 0.99, 0.95, 3.9811],
    [43, 0.9, 0.99, 1.874],
  ])('of one side, %d readings', (count, share, confidence, factor) => {
    expect(oneSidedFactor(count, { share, confidence })).toBeCloseTo(factor, 3)
  })

  it.each([
    // SOURCE other-method (exact integral, recomputed): the approximations of tables differ from it in the third figure
    [5, 0.95, 0.95, 5.0769],
    [10, 0.95, 0.95, 3.3934],
    [20, 0.95, 0.95, 2.7603],
    [30, 0.95, 0.95, 2.5549],
    [43, 0.9, 0.99, 2.2228],
  ])('of both sides, %d readings', (count, share, confidence, factor) => {
    expect(twoSidedFactor(count, { share, confidence })).toBeCloseTo(factor, 3)
  })
})

describe('passing without failure', () => {
  it('asks for so many pieces', () => {
    const pairs = [
      [0.9, 0.9],
      [0.95, 0.9],
      [0.9, 0.95],
      [0.95, 0.95],
      [0.9, 0.99],
      [0.95, 0.99],
      [0.99, 0.99],
    ]
    // SOURCE book: success-run tables n = ln(1 − C)/ln R, from memory
    const pieces = pairs.map(([confidence, reliability]) => piecesToPass({ confidence, reliability }))
    expect(pieces).toEqual([22, 29, 45, 59, 230, 299, 459])
  })

  it('shows what its number shows', () => {
    // SOURCE hand: 0.1^(1/22); with failures less, with all failed nothing
    expect(reliabilityShown({ tried: 22, failed: 0 }, 0.9)).toBeCloseTo(0.1 ** (1 / 22), 10)
    expect(reliabilityShown({ tried: 22, failed: 1 }, 0.9)).toBeLessThan(0.84)
    expect(reliabilityShown({ tried: 3, failed: 3 }, 0.9)).toBe(0)
  })
})

describe('a reading against its limits', () => {
  it('shows something only where the whole of its interval does', () => {
    const limits = { least: 3, most: 3.006 }
    // SOURCE standard: ISO 14253-1, decision rules, from memory
    expect(conformity(foundBy(3.003, 0.002), limits)).toBe('within')
    expect(conformity(foundBy(3.005, 0.002), limits)).toBe('undecided')
    expect(conformity(foundBy(3.009, 0.002), limits)).toBe('outside')
    expect(conformity({ least: 3.004, most: 3.006 }, limits)).toBe('within')
    expect(conformity({ least: 2.99, most: 2.999 }, { least: 3 })).toBe('outside')
  })
})

describe('whether readings are normal', () => {
  it('is likely for evenly spread quantiles of the normal and not for a single one that runs away', () => {
    const scores = Array.from({ length: 25 }, (_, index) => Math.tan((Math.PI * (index - 12)) / 40))
    // SOURCE property: tangents of even steps have the tails of a resonance; 1 ± small steps are near to even
    expect(normality(scores)?.byChance).toBeGreaterThan(0.05)
    expect(normality([...scores, 12])?.byChance).toBeLessThan(0.005)
    expect(normality([1, 2, 3])).toBeUndefined()
  })

  it('is judged by the critical values of its table', () => {
    // SOURCE book: D'Agostino and Stephens, table 4.7: A* = 0.752 at 5 %, 1.035 at 1 %, from memory; the statistic of a sample scaled to them
    const { statistic = 0, byChance = 0 } = normality([1, 1, 1, 1, 2, 2, 3, 5, 8, 9]) ?? {}
    expect(statistic).toBeGreaterThan(0.752)
    expect(byChance).toBeLessThan(0.05)
  })
})
