/** Two surfaces that slide on each other: their friction and their wear. */

/** Volume that a pair of surfaces loses, both together, for each unit of force and of way. Known to an order of magnitude at best. */
export interface WearRate {
  readonly name: string
  readonly least_mm2_N: number
  readonly likely_mm2_N: number
  readonly most_mm2_N: number
  readonly source: string
}

/** How a pair of surfaces wears. */
export interface PairWear {
  readonly rate: WearRate
  /** Worn through at that depth, and what lies under it; absent where it goes on for good. */
  readonly film?: { readonly depth_mm: number; readonly under: FrictionPair }
}

/** Friction of one pair of surfaces. Hold is judged at the least, letting go at the most. */
export interface FrictionPair {
  readonly name: string
  readonly moving: { readonly least: number; readonly likely: number; readonly most: number }
  readonly rest: { readonly least: number; readonly likely: number; readonly most: number }
  /** Absent when not stated. */
  readonly wear?: PairWear
  readonly source: string
}
