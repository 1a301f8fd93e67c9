import { describe, expect, it } from 'vitest'
import { emptyHeldEquation, type HeldEquation, solveHeld } from './held-part.ts'

const held = (given: Partial<HeldEquation>): HeldEquation => ({ ...emptyHeldEquation(), ...given })

describe('the equation of a part held by a pin and one thing of unknown size', () => {
  // l = (1, 0), G = (0, 4), g = 2, and λ = 3 sought: |G + λ l| = 5, so M = e · 5 − 2 · 3.
  const beside = { x: 1, known_y: 4, arm: 2 }

  it('takes the root with friction on the side of its lever', () => {
    for (const lever of [0.2, -0.2, 1.5, -1.5, 0]) {
      // SOURCE hand (3² + 4² = 5²; M = e · 5 − 6)
      expect(solveHeld(held({ ...beside, lever, known_moment: 5 * lever - 6 }))).toBeCloseTo(3, 12)
    }
  })

  it('turns round with the side from which the unknown acts', () => {
    // SOURCE hand (l = (−1, 0) and g = −2 with λ = −3 are the same force)
    expect(solveHeld(held({ x: -1, known_y: 4, arm: -2, lever: 0.2, known_moment: -5 }))).toBeCloseTo(-3, 12)
  })

  it('gives a couple directly', () => {
    // SOURCE hand (l = 0, g = 1: λ = e |G| − M = 0.3 · 5 − 2)
    expect(solveHeld(held({ arm: 1, known_x: 3, known_y: -4, lever: 0.3, known_moment: 2 }))).toBeCloseTo(-0.5, 14)
  })

  it('gives nothing for nothing', () => {
    expect(solveHeld(held({ ...beside, known_y: 0, lever: 0.2 }))).toBe(0)
  })

  it('keeps its digits where the leading coefficient all but vanishes', () => {
    // SOURCE hand: l = (1, 0), G = (−3, 4), M = e · 5 with λ = 0, and with λ = 6 again |G + λ l| = 5, so g = 0 has both roots;
    // with g = e (1 + x) and M = e · 5 − 6 g the root is 6 for every x > 0.
    for (const x of [1e-1, 1e-2, 1e-3, 1e-4]) {
      const arm = 0.2 * (1 + x)
      const given = { x: 1, known_x: -3, known_y: 4, arm, lever: 0.2, known_moment: 1 - 6 * arm }
      expect(Math.abs(solveHeld(held(given)) - 6)).toBeLessThan(1e-10)
    }
  })

  it('has no answer where the unknown passes through the friction circle', () => {
    const given = { ...beside, known_moment: -5 }
    expect(solveHeld(held({ ...given, lever: 1.999 }))).not.toBeNaN()
    for (const lever of [2 * (1 - 1e-6), 2, 2.1, -2, -7]) expect(solveHeld(held({ ...given, lever }))).toBeNaN()
  })
})
