import { describe, expect, it } from 'vitest'
import { sizeFactor, surfaceFactor } from './endurance.ts'
import { amplitudeAlone, fatigueLimit } from './fatigue.ts'
import { leastMargin } from './margin.ts'

describe('a stress that comes and goes', () => {
  it('asks for the beam of the worked example', () => {
    // SOURCE book (Bhandari, ex. 5.12, read: 40C8, S_ut 600, −50 to 150 N at 100 mm, K_f 1.396, k_b 0.85, 90 %: 0.897, factor 2 on a machined
    // beam: 11.868 mm, with S_e = k_a 0.85 × 0.897 × 300 / 1.396)
    const strength_MPa = (surfaceFactor('machined', 600) * 0.85 * 0.897 * 300) / 1.396
    const stress = (moment_Nmm: number) => (32 * moment_Nmm) / (Math.PI * 11.867951 ** 3)
    const swing = { most_MPa: stress(15_000), least_MPa: stress(-5_000) }
    const margin = leastMargin([fatigueLimit(swing, { strength_MPa, ultimate_MPa: 600 }, 2)])
    expect(margin?.value).toBeCloseTo(0, 4)
  })

  it('is as bad as its amplitude alone, when it goes both ways', () => {
    const borne = { strength_MPa: 200, ultimate_MPa: 800 }
    // SOURCE property (no mean); SOURCE hand (0 to 100: 50 + 50 × 200/800 = 62.5)
    expect(amplitudeAlone({ most_MPa: 100, least_MPa: -100 }, borne)).toBe(100)
    expect(amplitudeAlone({ most_MPa: 100, least_MPa: 0 }, borne)).toBe(62.5)
    // SOURCE property (a mean in compression gains nothing)
    expect(amplitudeAlone({ most_MPa: 0, least_MPa: -100 }, borne)).toBe(50)
  })

  it('reaches zero margin where the two shares add to one', () => {
    // SOURCE property (σ_a/S_N + σ_m/S_ut = 1/n, solved for the load by halving)
    const borne = { strength_MPa: 150, ultimate_MPa: 500 }
    const shares = (scale: number) => (scale * 30) / borne.strength_MPa + (scale * 50) / borne.ultimate_MPa
    let [low, high] = [0, 100]
    for (let round = 0; round < 60; round++) {
      const middle = (low + high) / 2
      if (shares(middle) < 1) low = middle
      else high = middle
    }
    const margin = leastMargin([fatigueLimit({ most_MPa: 80 * low, least_MPa: 20 * low }, borne, 1)])
    expect(margin?.value).toBeCloseTo(0, 9)
  })

  it('leaves size alone for a beam of the example’s kind', () => {
    expect(sizeFactor(0.37 * 11.868)).toBe(1) // SOURCE property (smaller than a specimen)
  })
})
