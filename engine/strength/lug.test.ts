import { describe, expect, it } from 'vitest'
import { lug, pinShear } from './lug.ts'

const PSI = 0.006894757
const IN = 25.4
const LBF = 4.4482216

describe('stresses about a pin', () => {
  it('are those of a textbook’s linkage', () => {
    // SOURCE book (Beer, Johnston, DeWolf, Mechanics of Materials, sample problem 1.1, p. 18, by a notebook that quotes it: link force
    // 750 lb; 6790 psi in a 3/8 in pin in single shear, 7640 psi in a 1/4 in pin in double, 2290 psi in the net section of 3/8 × 1.25 in)
    const force = 750 * LBF
    expect(pinShear(force, 0.375 * IN) / PSI).toBeCloseTo(6790.6, 0)
    expect(pinShear(force / 2, 0.25 * IN) / PSI).toBeCloseTo(7639.4, 0)
    const eye = lug({ force_N: force, hole_mm: 0.375 * IN, thickness_mm: 0.375 * IN, edge_mm: IN, width_mm: 1.25 * IN })
    expect(eye.section / PSI).toBeCloseTo(2285.7, 0)
    const plate = lug({ force_N: force / 2, hole_mm: 0.25 * IN, thickness_mm: 0.25 * IN, edge_mm: IN, width_mm: IN })
    expect(plate.bearing / PSI).toBeCloseTo(6000, 0)
  })

  it('size an eye bar as a second one does', () => {
    // SOURCE book (the same, sample problem 1.2, p. 19: 120 kN, 28 mm bolt in 20 mm plate bears with 214 MPa; b 62.3 mm at 175 MPa)
    const eye = lug({ force_N: 120_000, hole_mm: 28, thickness_mm: 20, edge_mm: 60, width_mm: 62.28 })
    expect(eye.bearing).toBeCloseTo(214.3, 1)
    expect(eye.section).toBeCloseTo(175, 0)
  })

  it('grow without bound as the hole comes to its edge', () => {
    const at = (edge_mm: number) => lug({ force_N: 10, hole_mm: 3, thickness_mm: 2, edge_mm, width_mm: 9 }).tearOut
    // SOURCE hand (10 / (2 × 2 × 1) = 2.5; at the hole's own radius nothing is left)
    expect(at(2.5)).toBeCloseTo(2.5, 12)
    expect(at(1.5001)).toBeGreaterThan(20_000)
    expect(at(1.5)).toBe(Number.POSITIVE_INFINITY)
  })
})
