/** What is asked of a spring, and what is found. */
import type { Spring } from '../../design/design.ts'
import type { CompressionWire } from '../../design/springs/spring-wire.ts'
import type { SpringChecks, SpringRange } from '../spring-strength.ts'

/** What a torsion spring has to give, N·mm, and where it has to go. */
export interface WantedTorsion {
  readonly kind: 'torsion'
  readonly least_Nmm: number
  readonly most_Nmm: number
  /** Turn between the two, rad. */
  readonly apart_rad: number
  readonly over_mm: number
  readonly outside_mm: number
  /** Along the pin. */
  readonly width_mm: number
  readonly legs_mm: number
  /** Absent: without end. */
  readonly cycles?: number | undefined
}

/** What a compression or tension spring has to give, N, at two lengths between its ends, mm. */
export interface WantedStraight {
  readonly kind: 'compression' | 'tension'
  readonly least_N: number
  readonly most_N: number
  readonly atLeast_mm: number
  readonly atMost_mm: number
  /** Of what it goes over; 0 for nothing. */
  readonly over_mm: number
  readonly outside_mm: number
  /** How a compression spring is kept upright, where it goes over nothing. */
  readonly seats?: CompressionWire['seats'] | undefined
  readonly cycles?: number | undefined
}

/** What is asked of a spring. */
export type WantedSpring = WantedTorsion | WantedStraight

/** One spring that can be wound and that fits. */
export interface FittingSpring {
  /** As the design would have it, with its wire. */
  readonly spring: Spring
  readonly range: SpringRange
  /** Angle by which it is wound up, rad, or way by which it is pressed or pulled, mm, where it gives least. */
  readonly ready: number
  readonly checks: SpringChecks
  /** The least margin of all checks. */
  readonly least: number
  /** What is left of the room, mm: around it, and along it for a torsion spring. */
  readonly leftAround_mm: number
  readonly leftAlong_mm?: number
}
