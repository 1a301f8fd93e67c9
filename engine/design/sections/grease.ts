/** Where the bench greases a finger while it is put together. */

/** Places that get the same grease. */
export interface GreasePoint {
  readonly id: string
  /** The grease, in the workshop's words. */
  readonly grease: string
  /** How much, in the workshop's words; absent when not stated. */
  readonly amount?: string
  /** Indices of what it is put on. */
  readonly pins: readonly number[]
  readonly stops: readonly number[]
  readonly springs: readonly number[]
}
