/**
 * What a material bears in each kind of stress, yielding and breaking.
 *
 * Where a strength in shear or bearing is not stated, one that is less stands for it: the yield strength, and of the ultimate one its share in shear.
 * Yield and ultimate strength themselves are replaced by nothing.
 */
import type { Material } from '../design/design.ts'
import type { Factors } from './factors.ts'
import type { Limit } from './margin.ts'

/**
 * Strength in shear over that in tension: the energy of distortion (von Mises), 1/√3. Of metals that break in shear it is the lower end: 0.6 to
 * 0.65 in the rows of the table that state both.
 */
const SHEAR_ratio = 1 / Math.sqrt(3)

const YIELD = 'yield strength'
const ULTIMATE = 'ultimate strength'

/** Limits of a tension or bending stress, MPa. */
export function tensionLimits(material: Material, stress: number, factors: Factors): readonly Limit[] {
  return [
    { says: 'yields', stress, allowable: material.yield_MPa, property: YIELD, material, factor: factors.yield },
    { says: 'breaks', stress, allowable: material.ultimate_MPa, property: ULTIMATE, material, factor: factors.ultimate },
  ]
}

/** Limits of a shear stress, MPa. */
export function shearLimits(material: Material, stress: number, factors: Factors): readonly Limit[] {
  const { shear_MPa = inShear(material.ultimate_MPa) } = material
  return [
    { says: 'yields in shear', stress, allowable: inShear(material.yield_MPa), property: YIELD, material, factor: factors.yield },
    { says: 'shears off', stress, allowable: shear_MPa, property: ULTIMATE, material, factor: factors.ultimate },
  ]
}

function inShear(strength_MPa: number | undefined): number | undefined {
  return strength_MPa === undefined ? undefined : SHEAR_ratio * strength_MPa
}

/** Limits of the pressure of a pin in a hole, MPa. */
export function bearingLimits(material: Material, stress: number, factors: Factors): readonly Limit[] {
  const { bearingYield_MPa = material.yield_MPa, bearingUltimate_MPa = material.ultimate_MPa } = material
  return [
    { says: 'is dented by its pin', stress, allowable: bearingYield_MPa, property: YIELD, material, factor: factors.yield },
    {
      says: 'breaks under its pin',
      stress,
      allowable: bearingUltimate_MPa,
      property: ULTIMATE,
      material,
      factor: factors.ultimate,
    },
  ]
}
