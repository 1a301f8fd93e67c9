/** The tables of a flat finger: what hangs together in it, and where its numbers stand in one list. */
import type { Design } from '../../design/design.ts'
import type { FlatDrive } from './flat-drive.ts'
import type { NumberList } from './straight-numbers.ts'

/** Two parts that meet in a pin and hang by one more each on parts that are placed before them. */
export interface FlatDyad {
  readonly first: number
  readonly second: number
  readonly beyondFirst: number
  readonly beyondSecond: number
  /** Joints: of the first with what is beyond it, of the two with each other, of the second with what is beyond it. */
  readonly p: number
  readonly q: number
  readonly s: number
  /** Where the places of the joints on either part stand in the list of numbers. */
  readonly pOnFirst: number
  readonly pBeyond: number
  readonly qOnFirst: number
  readonly qOnSecond: number
  readonly sOnSecond: number
  readonly sBeyond: number
  /** +1 where the first (at p and q) or the second (at s) is the joint's part b, −1 where it is its a. */
  readonly pSide: number
  readonly qSide: number
  readonly sSide: number
}

/** A force of the world: its numbers stand at `at`, its direction is counted from the turn of `frame`. */
export interface FlatForce {
  readonly part: number
  readonly frame: number
  readonly at: number
}

/** A couple: its size stands at `at`; counter-clockwise on `part`, its reaction on `against`. */
export interface FlatCouple {
  readonly part: number
  readonly against: number
  readonly at: number
}

/** A load with its keeper, of a unit. */
export interface FlatCase {
  readonly forces: readonly FlatForce[]
  readonly couples: readonly FlatCouple[]
  readonly keeperForces: readonly FlatForce[]
  readonly keeperCouples: readonly FlatCouple[]
  /** Where the load that the keeper is allowed stands. */
  readonly allowed: number
}

/** What hangs together in a finger, and where its numbers stand. */
export interface FlatFinger {
  readonly parts_count: number
  readonly joints_count: number
  /** Parts a and b of each joint. */
  readonly a: Int32Array
  readonly b: Int32Array
  /** In the order in which they are placed. */
  readonly dyads: readonly FlatDyad[]
  /** The part that is driven, on its pin in the mount; the numbers of the drive stand at `at`. */
  readonly lead: FlatDrive & { readonly joint: number; readonly onMount: number; readonly onLead: number; readonly at: number }
  /** Between the lead and the mount; `sense` is −1 where the mount is what a spring's turn is told of. */
  readonly springs: readonly { readonly at: number; readonly sense: 1 | -1 }[]
  readonly weights: readonly { readonly part: number; readonly at: number }[]
  readonly stops: readonly { readonly round: number; readonly against: number; readonly at: number }[]
  /** Joints at A, B and C of each toggle. */
  readonly toggles: readonly (readonly [number, number, number])[]
  /** All parts but the mount. */
  readonly limbs: readonly FlatLimb[]
  /** All that moves with them and is asked for. */
  readonly places: readonly FlatPlace[]
  /** Range of the pull of weight, rad; absent where weight is left out. */
  readonly weight: Design['weight']
  /** Absent without a keeper. */
  readonly kept: FlatCase | undefined
  /** Where the rooms between pins and holes begin and end, mm. */
  readonly rooms: { readonly from: number; readonly to: number }
  readonly numbers: NumberList
}

/** What moves with a part: a place on it, or a vector that turns with it. Its two numbers stand at `at`. */
export interface FlatPlace {
  readonly part: number
  readonly at: number
  readonly is: 'place' | 'vector'
}

/** Where the place that a part hangs by and the end of its arm stand in the list of numbers; that of the lead ends a unit along its own x. */
export interface FlatLimb {
  readonly part: number
  readonly base: number
  readonly tip: number | undefined
}
