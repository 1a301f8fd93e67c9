/** What joins parts: pins, one-sided stops, and the toggles that are watched. */

import type { Coating, Material } from './materials.ts'
import type { Part, Point } from './parts.ts'
import type { Tolerance } from './sizes.ts'
import type { FrictionPair } from './surface-pairs.ts'
import type { Surface } from './surfaces.ts'

export interface HoleRef {
  readonly part: number
  readonly hole: number
}

export interface Pin extends Surface {
  readonly id: string
  /** Two or more holes of different parts. */
  readonly joins: readonly HoleRef[]
  readonly diameter_mm: number
  readonly tolerance?: Tolerance
  readonly material?: Material
  /** All over the pin. */
  readonly coating?: Coating
  readonly friction: FrictionPair
  /** Part index; friction and clearance act in all the others. */
  readonly fixedIn: number
  readonly shear: 'single' | 'double'
  /** Torque that resists any turn of this pin whatever the load: seals, grease. */
  readonly drag_Nmm: number
}

/** A round end of one part against an edge of another. One-sided: it can push, never pull. */
export interface Stop {
  readonly id: string
  readonly round: { readonly part: number; readonly at: Point; readonly radius_mm: number }
  readonly against: { readonly part: number; readonly edge: number }
  /** Where the round lies across the finger's width; absent: where its part does. */
  readonly across?: Part['across']
  /** Width of the zone about the round end, half of it on either side. */
  readonly profileZone_mm?: number
  /** On the round end; absent for that of its part. */
  readonly coating?: Coating
  readonly friction: FrictionPair
  /** Material removed (positive) or added (negative) between the two, e.g. wear or grit. */
  readonly gap_mm: number
}

export interface PartPoint {
  readonly part: number
  readonly at: Point
}

/** Three pins A-B-C: A and B on one part, B and C on another, A and C on two others. */
export interface Toggle {
  readonly id: string
  readonly a: number
  readonly b: number
  readonly c: number
  /** Straight is the dead centre (δ = 0); folded counts from the folded-back position. */
  readonly folded: boolean
}
