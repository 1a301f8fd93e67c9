/** How a surface is left by the shop: its edges and its roughness. */

/** What may stand over (positive) or has to be taken off (negative) at an edge, from one bound to the other, after ISO 13715. */
export interface EdgeState {
  /** The bound nearer to a sharp edge. */
  readonly from_mm: number
  readonly to_mm: number
}

/** Of a hole or of a pin; what is absent is not stated. */
export interface Surface {
  readonly edge?: EdgeState
  /** Mean deviation of the profile, Ra of ISO 21920-2. */
  readonly roughness_mm?: number
}
