import type { FrictionPair } from '../../design/design.ts'
import type { Problem } from '../../design/problem.ts'
import type { Verdict } from '../../figures/evaluation.ts'
import type { WearLevel } from './wear-rates.ts'
import type { WornThrough } from './wear-state.ts'

/** The finger after a number of closings. */
export interface WearPoint {
  readonly closings: number
  /** At the closings of a day that the document states, 365 days a year. */
  readonly years: number
  /** Of each toggle, closed, rad; undefined where the finger no longer closes. */
  readonly margins_rad: readonly (number | undefined)[]
  /** Absent where it does not exist: no drag is declared, or the finger no longer moves. */
  readonly returnMargin?: number
  /** N·mm per pin, from rest, least over the way. */
  readonly returnReserve_Nmm?: number
  /** Of the tip across its part; absent without a tip. */
  readonly tipPlay_mm?: number
}

/** A requirement over the closings. */
export interface WearFinding {
  readonly requirement: string
  readonly figure: string
  readonly asNew: Verdict
  /** Closings at which it is no longer met; absent where it holds as long as was looked, or never was. */
  readonly until?: number
  /** What it becomes then. */
  readonly becomes?: Verdict
}

/** A film that is gone, and when. */
export interface BareAt extends WornThrough {
  readonly closings: number
}

/** Wear of one pin's hole, or of one stop, at the end that was looked at. */
export interface WornPlace {
  readonly at: WornThrough['at']
  /** The part whose hole it is; absent for a stop. */
  readonly part?: string
  readonly depth_mm: number
  /** Force times way of a closing of the finger as new, N·m. */
  readonly rubbed_Nm: number
  /** The surfaces as new; under a film of theirs lies another pair. */
  readonly pair: FrictionPair
  readonly asNew: WornAsNew
}

/** What a closing of the finger as new takes off: depth of a hole over the area that its pin presses on, or volume at a stop. */
export type WornAsNew =
  | { readonly along_mm: number; readonly width_mm: number; readonly depth_mm: number }
  | { readonly curvature_1_mm: number; readonly width_mm: number; readonly volume_mm3: number }

/** Wear of a design from new to the end that was looked at. */
export interface Wear {
  readonly level: WearLevel
  readonly life_closings: number
  /** Closings that were looked at. */
  readonly end_closings: number
  /** Why it was not looked further; absent at the end that was meant. */
  readonly endedBy?: string
  readonly points: readonly WearPoint[]
  /** One a requirement, in their order. */
  readonly findings: readonly WearFinding[]
  readonly films: readonly BareAt[]
  readonly places: readonly WornPlace[]
  /** Which loads the closings carry, in words. */
  readonly loads: readonly string[]
}

/** Wear, or what the document would have to state first. */
export type Worn =
  | { readonly wear: Wear; readonly missing?: never }
  | { readonly wear?: never; readonly missing: readonly Problem[] }

/** How far the work is. */
export interface WearProgress {
  readonly closings: number
  readonly of: number
}
