/**
 * The design document as a type: everything read, resolved and in inside units (mm, N, N·mm, MPa, rad, kg).
 *
 * Frame: x towards the fingertip with the finger straight, y towards the back of the hand, angles counter-clockwise.
 * Flexion is clockwise and is stored positive. References between things are indices into the arrays of this object,
 * so that nothing has to be looked up by name again.
 */

import type { Screw } from './screws/screw.ts'
import type { CompressionWire, TensionWire, TorsionWire } from './springs/spring-wire.ts'

export interface Point {
  readonly x_mm: number
  readonly y_mm: number
}

export type Role = 'mount' | 'proximal' | 'middle' | 'distal' | 'link' | 'roller' | 'other'

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
}

export interface Dimension {
  readonly name: string
  /** In the inside unit of its kind. */
  readonly value: number
  readonly unit: string
  readonly typed: string
  readonly tolerance?: Tolerance
}

export interface Material {
  readonly name: string
  readonly density_kg_mm3: number
  readonly modulus_MPa: number
  /** Lateral over axial strain. This and the strengths are absent where nobody has stated them. */
  readonly poisson?: number
  /** Tension, least values of the condition that the name states. */
  readonly yield_MPa?: number
  readonly ultimate_MPa?: number
  /** Ultimate in shear. */
  readonly shear_MPa?: number
  /** Of a pin on a lug, the hole two diameters from its edge. */
  readonly bearingYield_MPa?: number
  readonly bearingUltimate_MPa?: number
  /** Amplitude without a mean stress that half of polished bent specimens bear for `fatigueCycles_count`. */
  readonly fatigue_MPa?: number
  readonly fatigueCycles_count?: number
  /** Neuber's length: the longer, the less a notch is felt. Absent: all of a notch is felt. */
  readonly notchLength_mm?: number
  readonly source: string
}

/** A coating as it comes from the coater: one thickness on all surfaces of a batch, another in the next batch. */
export interface Coating {
  readonly name: string
  /** Thickness outside, from batch to batch. */
  readonly thickness: { readonly least_mm: number; readonly most_mm: number }
  /** Share of the thickness that grows into the metal; the rest stands on its surface. */
  readonly inward_ratio: number
  /** Thickness in a bore over that outside. */
  readonly bore_ratio: number
  /** Share of its fatigue strength that a part keeps under it; absent: what the table of oxides says, if it does. */
  readonly keepsFatigue_ratio?: number
  /** The heat that the part sees. */
  readonly cure?: { readonly temperature_C: number; readonly time_s: number }
  readonly source: string
}

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

/** An opening or obround that a pin sits in. A slot lets the pin run along `along_rad` by up to `length_mm`. */
export interface Hole {
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

export interface Part {
  readonly id: string
  readonly name: string
  readonly role: Role
  readonly material?: Material
  readonly coating?: Coating
  /** What the coater keeps free of it. */
  readonly masked?: readonly ('holes' | 'edges')[]
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

export interface HoleRef {
  readonly part: number
  readonly hole: number
}

export interface Pin {
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

export type Spring =
  | {
      readonly id: string
      readonly kind: 'torsion'
      /** Pin index: where it sits. */
      readonly pin: number
      /** It turns `on` counter-clockwise (towards open) against `against` where its torque is positive. */
      readonly on: number
      readonly against: number
      readonly rate_Nmm_rad: number
      /** Torque at the drawn posture; grows by rate × flexion of `on` against `against`. */
      readonly preload_Nmm: number
      /** How far a spring as bought may be off, either way, as a share. */
      readonly within?: { readonly rate_ratio?: number; readonly preload_ratio?: number }
      /** Share of its torque lost to its own friction. */
      readonly ownFriction_ratio: number
      /** Absent when only rate and preload are stated. */
      readonly wire?: TorsionWire
      /** Around it and along the pin; absent when not stated. */
      readonly room?: { readonly outside_mm: number; readonly width_mm: number }
    }
  | (StraightSpring & { readonly kind: 'tension'; readonly wire?: TensionWire })
  | (StraightSpring & { readonly kind: 'compression'; readonly wire?: CompressionWire })

interface StraightSpring {
  readonly id: string
  readonly from: PartPoint
  readonly to: PartPoint
  readonly rate_N_mm: number
  readonly freeLength_mm: number
  /** Force at which a close-wound tension spring begins to open; 0 for others. */
  readonly initial_N: number
  /** How far a spring as bought may be off, either way, as a share. */
  readonly within?: { readonly rate_ratio?: number; readonly initial_ratio?: number }
  readonly ownFriction_ratio: number
  /** Around it, and the diameter of what it goes over, 0 for nothing; absent when not stated. */
  readonly room?: { readonly outside_mm: number; readonly over_mm: number }
}

/** What the wearer moves. Its coordinate grows as the finger closes. */
export type Drive =
  | { readonly kind: 'turn'; readonly part: number; readonly against: number; readonly pin: number; readonly travel: DriveTravel }
  | { readonly kind: 'pull'; readonly on: PartPoint; readonly towards: PartPoint; readonly travel: DriveTravel }
  | {
      readonly kind: 'wrap'
      readonly roller: PartPoint
      readonly pitchRadius_mm: number
      /** Sense in which a pull turns the roller. */
      readonly turns: 'clockwise' | 'counter-clockwise'
      readonly towards: PartPoint
      readonly travel: DriveTravel
    }

/** rad of flexion for a turn (0 where `part` and `against` are parallel), mm of stroke from the drawn posture for a pull or wrap. */
export interface DriveTravel {
  readonly open: number
  readonly closed: number
  /** N·mm or N that the wearer can give; absent when not stated. */
  readonly effortMost?: number
}

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

/** Three pins A-B-C: A and B on one part, B and C on another, A and C on two others. */
export interface Toggle {
  readonly id: string
  readonly a: number
  readonly b: number
  readonly c: number
  /** Straight is the dead centre (δ = 0); folded counts from the folded-back position. */
  readonly folded: boolean
}

/** How often the finger is closed. */
export interface Use {
  readonly closingsPerDay: number
  readonly years: number
  /** By load case index, their sum at most 1, the rest without load; absent when not stated. */
  readonly shares?: readonly { readonly loadCase: number; readonly share_ratio: number }[]
}

/** A pin, a part or a spring by its index. */
export interface Member {
  readonly kind: 'pin' | 'part' | 'spring'
  readonly index: number
}

export interface Requirement {
  readonly id: string
  /** Figure name, e.g. `closed.toggle.distal.deadCentreMargin`. */
  readonly figure: string
  readonly bound:
    | { readonly kind: 'atLeast' | 'atMost'; readonly value: number; readonly unit: string; readonly typed: string }
    | { readonly kind: 'is'; readonly value: boolean }
  readonly reason: string
  readonly source: string
}

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

export interface Design {
  readonly name: string
  readonly title: string
  readonly note: string
  /** Class of ISO 2768-1 for lengths without a tolerance of their own; absent: they are held at their nominal. */
  readonly generalTolerance?: 'f' | 'm' | 'c' | 'v'
  /** Absent: nothing is stated. */
  readonly variation?: VariationRules
  readonly dimensions: readonly Dimension[]
  readonly frictionPairs: readonly FrictionPair[]
  /** parts[0] is the mount. */
  readonly parts: readonly Part[]
  readonly pins: readonly Pin[]
  readonly stops: readonly Stop[]
  readonly springs: readonly Spring[]
  readonly drive: Drive
  /** Where and how the wearer forces a finger open that has gone past dead centre. */
  readonly release?: { readonly port: Port; readonly most?: number }
  readonly loadCases: readonly LoadCase[]
  readonly toggles: readonly Toggle[]
  /** Angles of the pull of gravity in the mount frame, counter-clockwise from x; absent: weight is left out. */
  readonly weight?: { readonly from_rad: number; readonly to_rad: number }
  /** Absent when not stated. */
  readonly use?: Use
  /** Absent when none are stated. */
  readonly screws?: readonly Screw[]
  /** What is to give way under too much load, the first first; absent when not stated. */
  readonly givesWay?: readonly Member[]
  /** By how much a strength must exceed its stress, yielding and breaking; absent when not stated. */
  readonly factors?: { readonly yield: number; readonly ultimate: number; readonly reason: string }
  /** Place that is watched as the tip of the finger. */
  readonly tip?: { readonly part: number; readonly pad: number }
  readonly requirements: readonly Requirement[]
  readonly orders: readonly Order[]
  readonly bought: readonly BoughtItem[]
  readonly making?: Making
}
