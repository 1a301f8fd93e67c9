/** Forces of the world on a finger, and the wearer's answer. */

/** Unit pattern of force or couple whose amplitude is asked for. */
export type Port =
  | { readonly kind: 'drive' }
  /** Clockwise (flexing) couple on `part`, its reaction on `against`. */
  | { readonly kind: 'couple'; readonly part: number; readonly against: number }
  | ({ readonly kind: 'force' } & PadForceDirection)

/** `direction_rad` counter-clockwise from the x axis of `frame` (a part index; the mount when fixed in space). */
export interface PadForceDirection {
  readonly part: number
  readonly pad: number
  readonly direction_rad: number
  readonly frame: number
}

export interface LoadCase {
  readonly id: string
  readonly name: string
  readonly forces: readonly (PadForceDirection & { readonly force_N: number })[]
  /** Counter-clockwise couple on `part`, its reaction on `against`. */
  readonly couples: readonly { readonly part: number; readonly against: number; readonly couple_Nmm: number }[]
  /** Where it acts: only closed, or all the way. */
  readonly acts: 'closed' | 'travel'
  readonly keeper?: { readonly port: Port; readonly allowed: number }
  /** A force out of the plane (a push on the side of the tip): carried by the hinges, it takes no part in motion. */
  readonly sideways: readonly { readonly part: number; readonly pad: number; readonly force_N: number }[]
}
