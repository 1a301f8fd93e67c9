/** What is ordered, bought and paid. */

/** What is ordered from one shop in one go. Prices in the document's currency. */
export interface Order {
  readonly id: string
  readonly process: string
  /** Indices of what it is done to, each thing once a finger. */
  readonly parts: readonly number[]
  readonly pins: readonly number[]
  readonly springs: readonly number[]
  /** Once a batch. */
  readonly setUp: number
  /** For every piece, and its material where that is charged apart. */
  readonly each: number
  readonly blank: number
}

export interface BoughtItem {
  readonly id: string
  readonly title: string
  /** In one finger. */
  readonly quantity: number
  readonly each: number
  /** Of one of them. */
  readonly mass_kg?: number
}

/** Hours, prices and losses of a batch. */
export interface Making {
  /** Fingers in one set. */
  readonly set_count: number
  readonly currency: string
  /** For an hour of work by hand. */
  readonly wage: number
  /** Minutes on the first finger. */
  readonly assembly_min: number
  readonly fitting_min: number
  readonly inspection_min: number
  /** Share of the minutes that is left each time the number made has doubled. */
  readonly learning_ratio: number
  /** Share of the fingers that can be sold. */
  readonly good_ratio: number
  /** Of a set. */
  readonly price?: number
}
