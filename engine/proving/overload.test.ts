import { describe, expect, it } from 'vitest'
import { overloadShare } from './overload.ts'

describe('the probability that a load exceeds what bears it', () => {
  it('is that of the worked example of a rod', () => {
    // SOURCE book (Shigley, example of a normal load on a normal strength: S_y 78.4 ± 5.90 kpsi, load 50 ± 4.1 kip, n 1.416 for a reliability of 0.999; from memory, worked
    // out again: c 0.07526 and 0.082, z = 0.416 / √(0.10656² + 0.082²) = 3.0938, Φ(−3.0938) = 9.88e-4)
    expect(overloadShare(1.416, { strength_ratio: 5.9 / 78.4, load_ratio: 4.1 / 50 })).toBeCloseTo(9.88e-4, 5)
  })

  it('is one half where both means are the same, and grows with either scatter', () => {
    // SOURCE property: the difference is symmetric about zero
    expect(overloadShare(1, { strength_ratio: 0.1, load_ratio: 0.2 })).toBe(0.5)
    const at = (strength_ratio: number, load_ratio: number) => overloadShare(1.5, { strength_ratio, load_ratio })
    expect(at(0.1, 0.1)).toBeLessThan(at(0.12, 0.1))
    expect(at(0.1, 0.1)).toBeLessThan(at(0.1, 0.12))
  })

  it('is the share of pairs in a grid of both laws whose load is the larger', () => {
    const scatter = { strength_ratio: 0.12, load_ratio: 0.2 }
    const steps = 400
    const density = (x: number) => Math.exp((-x * x) / 2)
    const grid = Array.from({ length: steps }, (_, index) => -6 + (12 * (index + 0.5)) / steps)
    let [all, over] = [0, 0]
    for (const u of grid) {
      for (const v of grid) {
        const weight = density(u) * density(v)
        all += weight
        if (1 + scatter.load_ratio * v > 1.4 * (1 + scatter.strength_ratio * u)) over += weight
      }
    }
    // SOURCE other-method: a double sum over both laws, without the law of their difference
    expect(overloadShare(1.4, scatter)).toBeCloseTo(over / all, 3)
  })
})
