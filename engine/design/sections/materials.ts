/** What parts are made of and coated with. */

export interface Material {
  readonly name: string
  readonly density_kg_mm3: number
  readonly modulus_MPa: number
  /** Lateral over axial strain. This and the strengths are absent where nobody has stated them. */
  readonly poisson?: number
  /** Tension, least values of the condition that the name states. */
  readonly yield_MPa?: number
  readonly ultimate_MPa?: number
  /** Ultimate in shear. */
  readonly shear_MPa?: number
  /** Of a pin on a lug, the hole two diameters from its edge. */
  readonly bearingYield_MPa?: number
  readonly bearingUltimate_MPa?: number
  /** Amplitude without a mean stress that half of polished bent specimens bear for `fatigueCycles_count`. */
  readonly fatigue_MPa?: number
  readonly fatigueCycles_count?: number
  /** Neuber's length: the longer, the less a notch is felt. Absent: all of a notch is felt. */
  readonly notchLength_mm?: number
  readonly source: string
}

/** A coating as it comes from the coater: one thickness on all surfaces of a batch, another in the next batch. */
export interface Coating {
  readonly name: string
  /** Thickness outside, from batch to batch. */
  readonly thickness: { readonly least_mm: number; readonly most_mm: number }
  /** Share of the thickness that grows into the metal; the rest stands on its surface. */
  readonly inward_ratio: number
  /** Thickness in a bore over that outside. */
  readonly bore_ratio: number
  /** Share of its fatigue strength that a part keeps under it; absent: what the table of oxides says, if it does. */
  readonly keepsFatigue_ratio?: number
  /** The heat that the part sees. */
  readonly cure?: { readonly temperature_C: number; readonly time_s: number }
  readonly source: string
}
