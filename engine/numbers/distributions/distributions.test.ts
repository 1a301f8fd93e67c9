import { describe, expect, it } from 'vitest'
import { betaCdf, betaQuantile } from './incomplete-beta.ts'
import { logGamma } from './log-gamma.ts'
import { normalCdf, normalDensity, normalQuantile } from './normal.ts'
import { studentCdf, studentQuantile } from './student.ts'

const relative = (value: number, expected: number): number => Math.abs(value / expected - 1)

describe('the normal distribution', () => {
  // SOURCE other-method (scipy 1.17, norm.cdf and norm.ppf; 1.959963984540054 is printed in every table)
  it.each([
    [-37, 5.7255712225239266e-300],
    [-8, 6.22096057427174e-16],
    [-3, 0.0013498980316300933],
    [-2.5, 0.006209665325776132],
    [-1, 0.15865525393145707],
    [0.3, 0.6179114221889526],
    [2, 0.9772498680518208],
    // Far out the rounding of x² alone moves exp(−x²/2) by some 1e-13 of itself.
  ])('share below %d', (x, share) => expect(relative(normalCdf(x), share)).toBeLessThan(x < -30 ? 2e-13 : 2e-14))

  it.each([
    [1e-300, -37.0470962993612],
    [1e-20, -9.262340089798409],
    [1e-5, -4.264890793922825],
    [0.02, -2.053748910631823],
    [0.3, -0.5244005127080409],
    [0.975, 1.959963984540054],
  ])('quantile of %d', (p, x) => expect(relative(normalQuantile(p), x)).toBeLessThan(1e-14))

  it('quantile and share undo one another, and the share grows by the density', () => {
    for (let x = -8; x <= 5; x += 0.173) {
      // SOURCE property
      expect(Math.abs(normalQuantile(normalCdf(x)) - x)).toBeLessThan(1e-9)
      expect(relative((normalCdf(x + 1e-5) - normalCdf(x - 1e-5)) / 2e-5, normalDensity(x))).toBeLessThan(1e-5)
    }
  })
})

describe('the beta distribution', () => {
  // SOURCE other-method (scipy 1.17, beta.cdf)
  it.each([
    [2, 3, 0.4, 0.5248],
    [81, 183, 0.3, 0.41146159809547905],
    [0.5, 7.5, 0.1, 0.7837516348627335],
  ])('share of Beta(%d, %d) below %d', (a, b, x, share) => expect(betaCdf({ a, b }, x)).toBeCloseTo(share, 13))

  it.each([
    [81, 263, 0.2527, 0.3676],
    [15, 148, 0.0578, 0.1617],
    [1, 29, 0.0009, 0.1776],
  ])('the exact interval of %d out of %d', (hits, of, least, most) => {
    // SOURCE paper (R. G. Newcombe, Statistics in Medicine 17, 1998, table I, from memory)
    expect(betaQuantile({ a: hits, b: of - hits + 1 }, 0.025)).toBeCloseTo(least, 4)
    expect(betaQuantile({ a: hits + 1, b: of - hits }, 0.975)).toBeCloseTo(most, 4)
  })

  it('has the closed form x^a where b is 1', () => {
    // SOURCE property
    for (const x of [0.01, 0.4, 0.9]) expect(relative(betaCdf({ a: 3.5, b: 1 }, x), x ** 3.5)).toBeLessThan(1e-12)
  })

  it('the gamma function of whole numbers is a factorial', () => {
    // SOURCE hand (11! = 39916800; gamma of one half is the root of pi)
    expect(relative(Math.exp(logGamma(12)), 39916800)).toBeLessThan(1e-13)
    expect(relative(Math.exp(logGamma(0.5)), Math.sqrt(Math.PI))).toBeLessThan(1e-13)
  })
})

describe('Student’s t', () => {
  // SOURCE other-method (scipy 1.17, t.ppf); 12.706, 4.303 and 2.131 stand in the printed tables
  it.each([
    [1, 0.975, 12.706204736174694],
    [2, 0.975, 4.302652729749462],
    [15, 0.975, 2.131449545559776],
    [15, 0.995, 2.946712883475238],
    [15, 0.6, 0.25788530093726125],
    [120, 0.975, 1.9799304050824402],
  ])('quantile of %d degrees of freedom at %d', (freedom, p, t) => {
    expect(relative(studentQuantile(freedom, p), t)).toBeLessThan(1e-11)
    expect(studentQuantile(freedom, 1 - p)).toBeCloseTo(-t, 9)
  })

  it('has the closed form of two degrees of freedom', () => {
    // SOURCE property (½ + t / (2 √(2 + t²)))
    for (const t of [-3, -0.2, 0.7, 5]) expect(studentCdf(2, t)).toBeCloseTo(0.5 + t / (2 * Math.sqrt(2 + t * t)), 12)
  })

  it('gives the interval of a mean in the heat-flow example', () => {
    const half = (studentQuantile(194, 0.975) * 0.02278881) / Math.sqrt(195)
    // SOURCE dataset (NIST e-Handbook 1.3.5.2, ZARR13, figures from memory: 9.258242 to 9.264679)
    expect(9.26146 - half).toBeCloseTo(9.258242, 5)
    expect(9.26146 + half).toBeCloseTo(9.264679, 5)
  })
})
