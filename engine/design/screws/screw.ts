import type { ScrewClass, Thread } from './thread-rows.ts'

/** A hole with a thread as the shop makes it, depths from the face. */
export interface TappedHole {
  /** Tolerance class of the thread, such as `6H`. */
  readonly class?: string
  readonly drill_mm?: number
  /** Absent: drilled through, unless nothing is stated. */
  readonly drillDepth_mm?: number
  readonly threadDepth_mm?: number
}

/** Screws of one kind, turned in with one torque, each in a thread of a part. */
export interface Screw {
  readonly id: string
  readonly thread: Thread
  readonly class: ScrewClass
  /** Index of the part that has the thread. */
  readonly part: number
  /** Length of full thread in grip, mm. */
  readonly engagement_mm: number
  /** The hole that is tapped for it; what is absent is not stated. */
  readonly tapped: TappedHole
  readonly torque_Nmm: number
  /** How torque becomes preload: by one coefficient, or by the friction in the thread and under the head. */
  readonly turning:
    | { readonly kind: 'coefficient'; readonly torque_ratio: number }
    | { readonly kind: 'friction'; readonly thread: number; readonly head: number }
  /** Share by which the preload may be off either way. */
  readonly scatter_ratio: number
  /** Screws side by side across the finger. */
  readonly screws_count: number
  /** Where the middle of each lies across the finger's width; absent when not stated. */
  readonly across_mm?: readonly number[]
  /** Of one of them; absent when not stated. */
  readonly mass_kg?: number
  /** What one of them costs, in the document's currency; absent when not stated. */
  readonly each?: number
  /** Where in the mount's frame they hold the mount down, and which way they pull it; absent for screws that do not. */
  readonly holdsMount?: { readonly at: { readonly x_mm: number; readonly y_mm: number }; readonly pulls_rad: number }
}
