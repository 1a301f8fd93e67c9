import { describe, expect, it } from 'vitest'
import { sideStress, twistStress } from './side-section.ts'

/** Largest shear stress of a twisted rectangle by the series of Saint-Venant: b the short side, h the long one. */
function bySeries(twist: number, b: number, h: number): number {
  let stiffness = 0
  let peak = 0
  for (let n = 1; n < 60; n += 2) {
    const reach = (n * Math.PI * h) / (2 * b)
    stiffness += Math.tanh(reach) / n ** 5
    peak += 1 / (n ** 2 * Math.cosh(reach))
  }
  const j = (h * b ** 3 * (1 - ((192 * b) / (Math.PI ** 5 * h)) * stiffness)) / 3
  return (twist / j) * b * (1 - (8 / Math.PI ** 2) * peak)
}

describe('a section pushed from the side', () => {
  it.each([1, 1.5, 2, 4, 10])('is twisted as the series says, %s times as long as wide', (ratio) => {
    // SOURCE other-method (Saint-Venant's series of a rectangle, e.g. Timoshenko and Goodier, section 109, from memory)
    const formula = twistStress(1000, { height_mm: 4 * ratio, widths_mm: [4] })
    expect(Math.abs(formula / bySeries(1000, 4, 4 * ratio) - 1)).toBeLessThan(0.045)
    expect(twistStress(1000, { height_mm: 4, widths_mm: [4 * ratio] })).toBeCloseTo(formula, 9) // SOURCE property (turned over)
  })

  it('bends about its weak axis', () => {
    // SOURCE hand (6 × 1000 × 4 / (10 × 64) = 37.5; two bars side by side carry half each)
    const bent = { bending_Nmm: 1000, twist_Nmm: 0, shear_N: 0 }
    expect(sideStress(bent, { height_mm: 10, widths_mm: [4] })).toBeCloseTo(37.5, 12)
    expect(sideStress(bent, { height_mm: 10, widths_mm: [4, 4] })).toBeCloseTo(18.75, 12)
  })

  it('gives the thicker of two bars the most of it', () => {
    // SOURCE hand (bars 4 and 2 wide: shares 64/72 and 8/72; 6 × 1000 × 4 / (10 × 72) = 33.33)
    const bent = { bending_Nmm: 1000, twist_Nmm: 0, shear_N: 0 }
    expect(sideStress(bent, { height_mm: 10, widths_mm: [4, 2] })).toBeCloseTo(33.33, 2)
  })

  it('adds shear to bending as the energy of distortion does', () => {
    // SOURCE hand (shear 1.5 × 80 / (10 × 4) = 3; √(37.5² + 3 × 3²) = 37.858)
    expect(sideStress({ bending_Nmm: 1000, twist_Nmm: 0, shear_N: 80 }, { height_mm: 10, widths_mm: [4] })).toBeCloseTo(37.858, 3)
  })

  it('holds nothing where nothing is left', () => {
    expect(sideStress({ bending_Nmm: 1, twist_Nmm: 0, shear_N: 0 }, { height_mm: 0, widths_mm: [4] })).toBe(
      Number.POSITIVE_INFINITY,
    )
  })
})
