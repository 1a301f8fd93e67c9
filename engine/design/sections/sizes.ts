/** Sizes and how they vary, as a finger's document states them. */

/** How a size is spread between its limits, or the sizes that were measured, in ascending order. */
export type SizeLaw =
  | { readonly kind: 'uniform' }
  /** Three standard deviations go `capability` times into the way from the middle to a limit. */
  | { readonly kind: 'normal' | 'truncated'; readonly capability: number }
  | { readonly kind: 'sample'; readonly values: readonly number[] }

/** Tolerance as the drawing gives it: by limits, or by a zone or class of fit whose limits stand in a table. */
export type Tolerance = ({ readonly kind: 'limits' } | { readonly kind: 'zone'; readonly zone: string }) & {
  /** Deviations from the nominal. */
  readonly lower: number
  readonly upper: number
  /** Absent where that of the design holds. */
  readonly law?: SizeLaw
}

/** How what has a range is spread, wherever nothing else is stated. */
export interface VariationRules {
  readonly sizes: SizeLaw
  readonly positions: 'uniform' | 'normal'
  readonly coatings: 'uniform' | 'normal'
  readonly friction: 'uniform' | 'normal'
  readonly springs: 'uniform' | 'normal'
  /** What wearers give at the drive, N or N·mm. */
  readonly effortOfWearers?: { readonly least: number; readonly most: number }
  /** Absent where no tolerance has a price. */
  readonly prices?: readonly TolerancePrices[]
}

/** What tolerances of one size cost, in the currency of the document. */
export interface TolerancePrices {
  /** As typed. */
  readonly size: string
  readonly drawn: number
  readonly offers: readonly { readonly tolerance: string; readonly price: number }[]
  readonly source: string
}

export interface Dimension {
  readonly name: string
  /** In the inside unit of its kind. */
  readonly value: number
  readonly unit: string
  readonly typed: string
  readonly tolerance?: Tolerance
}
