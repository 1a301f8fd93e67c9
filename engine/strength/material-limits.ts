/** What a material bears in each kind of stress, yielding and breaking. */
import type { Material } from '../design/design.ts'
import type { Factors } from './factors.ts'
import type { Limit } from './margin.ts'

/** Yield in shear over yield in tension: the energy of distortion (von Mises), 1/√3. */
const SHEAR_YIELD_ratio = 1 / Math.sqrt(3)

/** Limits of a tension or bending stress, MPa. */
export function tensionLimits(material: Material, stress: number, factors: Factors): readonly Limit[] {
  return [
    { says: 'yields', stress, allowable: material.yield_MPa, factor: factors.yield },
    { says: 'breaks', stress, allowable: material.ultimate_MPa, factor: factors.ultimate },
  ]
}

/** Limits of a shear stress, MPa. */
export function shearLimits(material: Material, stress: number, factors: Factors): readonly Limit[] {
  const yields = material.yield_MPa === undefined ? undefined : SHEAR_YIELD_ratio * material.yield_MPa
  return [
    { says: 'yields in shear', stress, allowable: yields, factor: factors.yield },
    { says: 'shears off', stress, allowable: material.shear_MPa, factor: factors.ultimate },
  ]
}

/** Limits of the pressure of a pin in a hole, MPa. Where no bearing strength is stated its yield strength stands for it, which is less. */
export function bearingLimits(material: Material, stress: number, factors: Factors): readonly Limit[] {
  return [
    { says: 'is dented by its pin', stress, allowable: material.bearingYield_MPa ?? material.yield_MPa, factor: factors.yield },
    { says: 'breaks under its pin', stress, allowable: material.bearingUltimate_MPa, factor: factors.ultimate },
  ]
}
