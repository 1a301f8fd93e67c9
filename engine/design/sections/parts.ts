/** Rigid bodies and the places on them that other things name. */

import type { Coating, Material } from './materials.ts'
import type { Tolerance } from './sizes.ts'
import type { EdgeState, Surface } from './surfaces.ts'

export interface Point {
  readonly x_mm: number
  readonly y_mm: number
}

export type Role = 'mount' | 'proximal' | 'middle' | 'distal' | 'link' | 'roller' | 'other'

/** An opening or obround that a pin sits in. A slot lets the pin run along `along_rad` by up to `length_mm`. */
export interface Hole extends Surface {
  readonly id: string
  readonly at: Point
  readonly diameter_mm: number
  readonly tolerance?: Tolerance
  /** Diameter of the round zone in which the true centre lies. */
  readonly positionZone_mm?: number
  /** The zone grows by what the hole is larger than its least size. */
  readonly hasPositionBonus?: true
  /** Places of the other holes of the part are measured from this one. */
  readonly isDatum?: true
  readonly slot?: { readonly length_mm: number; readonly along_rad: number }
}

/**
 * A boundary for stops.
 * Straight: the solid lies to the right of from → to. Arc: the solid is inside or outside of the circle.
 * Corners act as arcs of radius 0.
 */
export type Edge = {
  /** Width of the zone about the edge, half of it on either side. */
  readonly profileZone_mm?: number
  /** Ra; absent when not stated. */
  readonly roughness_mm?: number
} & (
  | { readonly id: string; readonly kind: 'straight'; readonly from: Point; readonly to: Point }
  | {
      readonly id: string
      readonly kind: 'arc'
      readonly centre: Point
      readonly radius_mm: number
      /** Counter-clockwise from `from_rad` to `to_rad`. */
      readonly from_rad: number
      readonly to_rad: number
      readonly solid: 'inside' | 'outside'
    }
)

export interface Pad {
  readonly id: string
  readonly at: Point
}

/** Faces of a part that go together. */
export type FaceKind = 'holes' | 'edges' | 'outline' | 'faces' | 'threads'
/** All faces of a kind, or one of them: `holes`, `holes.mcp`, `faces.front`, `threads.rear`. */
export type FaceName = FaceKind | `${FaceKind}.${string}`

export interface Part {
  readonly id: string
  readonly name: string
  readonly role: Role
  readonly material?: Material
  readonly coating?: Coating
  /** Faces that the coater keeps free of it; whether one is, `isMasked` says. */
  readonly masked?: readonly FaceName[]
  /** Where the coater's rack may touch. */
  readonly racks?: readonly Point[]
  /** Around the part and in its inside corners, where a hole does not state its own; absent when not stated. */
  readonly outsideEdges?: EdgeState
  readonly insideEdges?: EdgeState
  /** Ra where a hole or an edge does not state its own; absent when not stated. */
  readonly roughness_mm?: number
  readonly thickness_mm?: number
  readonly mass_kg?: number
  readonly centreOfMass?: Point
  /** Closed polygon; may be empty, then the drawing makes its own. */
  readonly outline: readonly Point[]
  /** Slices across the finger's width in which the part lies: one for a plate, two for a fork. Absent when not stated. */
  readonly across?: readonly { readonly from_mm: number; readonly to_mm: number }[]
  readonly holes: readonly Hole[]
  readonly edges: readonly Edge[]
  readonly pads: readonly Pad[]
  /** Of a two-pin link along its pins. */
  readonly stiffness_N_mm?: number
  /** Place of the part's own frame in the mount frame as drawn; absent for a link that its pins place. */
  readonly drawn?: { readonly at: Point; readonly turn_rad: number }
}
