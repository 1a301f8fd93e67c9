import { describe, expect, it } from 'vitest'
import { column } from './column.ts'

const bar = { area_mm2: 10.4, secondMoment_mm4: (5.2 * 2 ** 3) / 12, modulus_MPa: 196_500, yield_MPa: 1172 }

describe('a bar under its critical force', () => {
  it('is Euler’s where it is slender', () => {
    // SOURCE hand (I = 3.4667, π² × 196500 × 3.4667 / 100² = 672.3)
    expect(column({ ...bar, length_mm: 100 }).force_N).toBeCloseTo(672.3, 0)
    expect(column({ ...bar, length_mm: 100 }).by).toBe('Euler')
  })

  it('is the yield force where it is stout', () => {
    // SOURCE hand (10.4 × 1172 = 12 189)
    expect(column({ ...bar, length_mm: 0.01 }).force_N).toBeCloseTo(12_189, 0)
  })

  it('changes over without a step and without a kink', () => {
    const radius = Math.sqrt(bar.secondMoment_mm4 / bar.area_mm2)
    const limit = Math.sqrt((2 * Math.PI ** 2 * bar.modulus_MPa) / bar.yield_MPa) * radius
    const at = (factor: number) => column({ ...bar, length_mm: limit * factor }).force_N
    // SOURCE property (both forms give S_y A / 2 there, with one slope)
    expect(at(1)).toBeCloseTo((bar.area_mm2 * bar.yield_MPa) / 2, 6)
    const [before, after] = [(at(1) - at(1 - 1e-5)) / 1e-5, (at(1 + 1e-5) - at(1)) / 1e-5]
    expect(after / before).toBeCloseTo(1, 3)
  })

  it('is the least force whose bent shape feeds itself, by steps along the bar', () => {
    // SOURCE other-method (shooting: θ' = −P y / EI, y' = θ from the pinned end; the other end comes back to zero at the critical force)
    const asked = { ...bar, length_mm: 80 }
    const end = (force: number): number => {
      const steps = 20_000
      const h = asked.length_mm / steps
      let y = 0
      let slope = 1
      for (let step = 0; step < steps; step++) {
        const middle = slope - ((h / 2) * force * y) / (bar.modulus_MPa * bar.secondMoment_mm4)
        y += h * middle
        slope -= (h * force * (y - (h / 2) * middle)) / (bar.modulus_MPa * bar.secondMoment_mm4)
      }
      return y
    }
    const { force_N } = column(asked)
    expect(end(0.999 * force_N)).toBeGreaterThan(0)
    expect(end(1.001 * force_N)).toBeLessThan(0)
  })
})
