import { describe, expect, it } from 'vitest'
import { tableMaterials } from '../design/read-materials.ts'
import { feltNotch, pulledHole } from './notch.ts'

const fitted = (hole_ratio: number) => pulledHole({ hole_mm: hole_ratio, width_mm: 1, clearance_mm: 0 }) ?? Number.NaN

describe('a hole pulled by its pin', () => {
  it.each([0.2, 0.3, 0.4, 0.5])('of %s of the width raises the section as the polynomial fitted to the section says', (r) => {
    // SOURCE other-method (the second polynomial of the same chart, for the mean stress of the section: 12.882 − 52.714 r + 89.762 r² −
    // 51.667 r³; from memory)
    const onSection = 12.882 - 52.714 * r + 89.762 * r ** 2 - 51.667 * r ** 3
    expect(Math.abs(fitted(r) / onSection - 1)).toBeLessThan(0.04)
  })

  it.each([1.5, 2, 2.25, 3])('in a round end %s times as large raises the pressure as the tests of lugs say', (outer_ratio) => {
    // SOURCE paper (Brussat, Kathiresan, Rudd, Engineering Fracture Mechanics 23, 1986: 2.75 (R/r − 1)^−0.675, 1.5 to 3; from memory)
    const onPressure = fitted(1 / outer_ratio) / (outer_ratio - 1)
    expect(Math.abs(onPressure / (2.75 * (outer_ratio - 1) ** -0.675) - 1)).toBeLessThan(0.08)
  })

  it('raises it by a half where its play is 2.7 %', () => {
    // SOURCE paper (Frocht and Hill, J. Applied Mechanics 7, 1940, as handbooks repeat it: 35 to 50 % with play; from memory)
    const loose = pulledHole({ hole_mm: 3, width_mm: 7, clearance_mm: 0.081 }) ?? Number.NaN
    expect(loose / fitted(3 / 7)).toBeCloseTo(1.5, 9)
  })

  it('is not guessed where it takes more than three quarters of the width', () => {
    expect(pulledHole({ hole_mm: 0.751, width_mm: 1, clearance_mm: 0 })).toBeUndefined()
    expect(pulledHole({ hole_mm: 1, width_mm: 0, clearance_mm: 0 })).toBeUndefined()
    expect(fitted(0.75)).toBeGreaterThan(1)
  })

  it('never helps, however large its plate', () => {
    // SOURCE property (the peak per newton falls as the plate grows, and is no smaller than the mean)
    const peaks = [0.7, 0.5, 0.3, 0.1, 0.01].map((r) => fitted(r) / (1 / r - 1))
    for (const [index, peak] of peaks.entries()) if (index > 0) expect(peak).toBeLessThanOrEqual(peaks[index - 1])
    expect(fitted(0.01)).toBeGreaterThan(1)
  })
})

describe('how much of a notch is felt', () => {
  it('is what the shaft of the handbook feels', () => {
    // SOURCE book (Shigley, ex. 6-6, from memory: fillet of 3 mm, K_t 1.65, S_ut 690 MPa, √a 0.313 √mm: K_f 1.55)
    expect(feltNotch(1.65, { radius_mm: 3, notchLength_mm: 0.313 ** 2 })).toBeCloseTo(1.55, 2)
  })

  it('is all of it where the material is not known', () => {
    expect(feltNotch(2.4, { radius_mm: 1.5, notchLength_mm: 0 })).toBeCloseTo(2.4, 12) // SOURCE property (the whole of K_t)
  })

  it('of hardened steel is as the polynomial of steel says', () => {
    const steel = tableMaterials.get('17-4PH H900')
    const kpsi = (steel?.ultimate_MPa ?? 0) / 6.894757
    // SOURCE book (Shigley, eq. 6-35a, √a in √in, from memory)
    const root = 0.246 - 3.08e-3 * kpsi + 1.51e-5 * kpsi ** 2 - 2.67e-8 * kpsi ** 3
    expect(steel?.notchLength_mm).toBeCloseTo(root ** 2 * 25.4, 3)
  })
})
