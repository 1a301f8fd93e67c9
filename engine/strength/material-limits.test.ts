import { describe, expect, it } from 'vitest'
import type { Material } from '../design/design.ts'
import { bearingLimits, shearLimits, tensionLimits } from './material-limits.ts'
import { foundAt } from './strength.ts'

const factors = { yield: 1.5, ultimate: 2 }
const bare: Material = { name: 'plain', density_kg_mm3: 8e-6, modulus_MPa: 200e3, source: 'invented' }
const strong = { ...bare, yield_MPa: 300, ultimate_MPa: 400 }
const kinds = [tensionLimits, shearLimits, bearingLimits] as const

/** Margin at a stress, or why there is none. */
const at = (limits: (typeof kinds)[number], material: Material, stress: number) => {
  const found = foundAt({ limits: limits(material, stress, factors), steps: [] }, {}, `material ${material.name}`)
  return found.margin ? found.margin.value : found.why
}

describe('a strength that is not stated', () => {
  it('in shear or in a hole is replaced by one that is less', () => {
    // SOURCE hand (100 MPa in shear: 400/√3/(2·100) − 1 = 0.1547 below 300/√3/(1.5·100) − 1 = 0.1547: equal, as 300/1.5 = 400/2)
    expect(at(shearLimits, strong, 100)).toBeCloseTo(400 / Math.sqrt(3) / 200 - 1, 12)
    expect(at(shearLimits, { ...strong, shear_MPa: 180 }, 100)).toBeCloseTo(-0.1, 12)
    // SOURCE hand (100 MPa in a hole: 300/150 − 1 = 1 and 400/200 − 1 = 1; with 600 MPa stated on yielding 400/200 − 1 stays)
    expect(at(bearingLimits, strong, 100)).toBeCloseTo(1, 12)
    expect(at(bearingLimits, { ...strong, bearingYield_MPa: 600 }, 100)).toBeCloseTo(1, 12)
    expect(at(bearingLimits, { ...strong, bearingYield_MPa: 600, bearingUltimate_MPa: 900 }, 100)).toBeCloseTo(3, 12)
  })

  it('leaves the check open and is named', () => {
    for (const limits of kinds) {
      expect(at(limits, bare, 100)).toBe('material plain states no yield strength and no ultimate strength')
      expect(at(limits, { ...bare, ultimate_MPa: 400 }, 10)).toBe('material plain states no yield strength')
      expect(at(limits, { ...bare, yield_MPa: 300 }, 10)).toBe('material plain states no ultimate strength')
    }
  })

  it('does not hide that another falls short by itself', () => {
    // SOURCE hand (300 MPa over 1.5 × 250, less 1)
    expect(at(tensionLimits, { ...bare, yield_MPa: 300 }, 250)).toBeCloseTo(-0.2, 12)
    expect(at(tensionLimits, bare, 0)).toMatch(/no load case/)
  })
})
