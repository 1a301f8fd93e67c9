import { describe, expect, it } from 'vitest'
import { gaugeStudy, type Study } from './gauge-study.ts'

// SOURCE paper: Houf and Burman, IEEE Trans. CHMT 11 (1988) 516-520 (data read in a reprint): 10 parts, 3 operators, 3 repeats
const houfAndBurman: Study = [
  '37 38 37 | 41 41 40 | 41 42 41',
  '42 41 43 | 42 42 42 | 43 42 43',
  '30 31 31 | 31 31 31 | 29 30 28',
  '42 43 42 | 43 43 43 | 42 42 42',
  '28 30 29 | 29 30 29 | 31 29 29',
  '42 42 43 | 45 45 45 | 44 46 45',
  '25 26 27 | 28 28 30 | 29 27 27',
  '40 40 40 | 43 42 42 | 43 43 41',
  '25 25 25 | 27 29 28 | 26 26 26',
  '35 34 34 | 35 35 34 | 35 34 35',
].map((part) => part.split('|').map((own) => own.trim().split(' ').map(Number)))

describe('a crossed gauge study', () => {
  it('parts its squares as published', () => {
    const { parts, appraisers, together, repeats, variance, gauge, toldApart, togetherByChance } = gaugeStudy(houfAndBurman)
    // SOURCE book: Montgomery, Introduction to Statistical Quality Control, gauge chapter: SS 3935.96, 39.27, 48.51, 30.67; from memory
    expect([parts, appraisers, together, repeats].map((one) => Number(one?.squares.toFixed(2)))).toEqual([
      3935.96, 39.27, 48.51, 30.67,
    ])
    expect([parts, appraisers, together, repeats].map((one) => one?.freedom)).toEqual([9, 2, 18, 60])
    // SOURCE other-method (recomputed): variances 0.5111, 0.5646, 0.7280, 48.2926; gauge 1.3430; 7.3 told apart (7.318)
    expect(variance.repeat).toBeCloseTo(0.5111, 4)
    expect(variance.appraiser).toBeCloseTo(0.5646, 4)
    expect(variance.together).toBeCloseTo(0.728, 4)
    expect(variance.part).toBeCloseTo(48.2926, 4)
    expect(gauge).toBeCloseTo(1.343, 4)
    expect(toldApart).toBeCloseTo(7.3, 1)
    expect(togetherByChance).toBeLessThan(1e-6)
  })

  it('of one appraiser speaks of repeats only', () => {
    const alone = gaugeStudy(houfAndBurman.map(([own]) => [own]))
    // SOURCE hand: with one appraiser the table is one-way
    expect(alone.appraisers).toBeUndefined()
    expect(alone.variance.appraiser).toBeUndefined()
    expect(alone.gauge).toBeCloseTo(Math.sqrt(alone.repeats.squares / 20), 12)
  })

  it('parts all of the squares', () => {
    const { parts, appraisers, together, repeats } = gaugeStudy(houfAndBurman)
    const values = houfAndBurman.flat(2)
    const middle = values.reduce((sum, value) => sum + value, 0) / values.length
    const total = values.reduce((sum, value) => sum + (value - middle) ** 2, 0)
    // SOURCE property: squares add up; the total is published as 4054.40
    expect(parts.squares + (appraisers?.squares ?? 0) + (together?.squares ?? 0) + repeats.squares).toBeCloseTo(total, 9)
    expect(total).toBeCloseTo(4054.4, 2)
  })
})
