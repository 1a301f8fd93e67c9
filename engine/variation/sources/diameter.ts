/** One diameter that the drawing limits, mm. */
export interface TolerancedDiameter {
  /** Of the pin or hole in the document. */
  readonly place: string
  readonly words: string
  /** Id of the source that moves it in the spread: its own, or that of the dimension that is its diameter. */
  readonly source: string
  readonly nominal_mm: number
  /** What the drawing allows; of a coated one with its coating on. */
  readonly finished: { readonly least: number; readonly most: number }
  /** Absent without a coating. */
  readonly coated?: {
    readonly coating: string
    /** What the shop works to. */
    readonly before: { readonly least: number; readonly most: number }
    /** How much the coating adds at the middle of its range; a hole loses. */
    readonly adds_mm: number
  }
  /** Of a pin: places of the stop rounds that are this pin itself. */
  readonly rounds: readonly string[]
}

/** A diameter as it was made: with its coating on, or before. */
export interface MadeDiameter {
  readonly value_mm: number
  readonly visit: 'finished' | 'before coating'
}
