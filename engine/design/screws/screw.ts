import type { ScrewClass, Thread } from './thread-rows.ts'

/** Screws of one kind, turned in with one torque, each in a thread of a part. */
export interface Screw {
  readonly id: string
  readonly thread: Thread
  readonly class: ScrewClass
  /** Index of the part that has the thread. */
  readonly part: number
  /** Length of full thread in grip, mm. */
  readonly engagement_mm: number
  readonly torque_Nmm: number
  /** How torque becomes preload: by one coefficient, or by the friction in the thread and under the head. */
  readonly turning:
    | { readonly kind: 'coefficient'; readonly torque_ratio: number }
    | { readonly kind: 'friction'; readonly thread: number; readonly head: number }
  /** Share by which the preload may be off either way. */
  readonly scatter_ratio: number
  /** Screws side by side across the finger. */
  readonly screws_count: number
  /** Where in the mount's frame they hold the mount down, and which way they pull it; absent for screws that do not. */
  readonly holdsMount?: { readonly at: { readonly x_mm: number; readonly y_mm: number }; readonly pulls_rad: number }
}
