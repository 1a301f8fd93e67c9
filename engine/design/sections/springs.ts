/** Springs by their rate and preload, with their wire where it is known. */

import type { CompressionWire, TensionWire, TorsionWire } from '../springs/spring-wire.ts'
import type { PartPoint } from './joints.ts'

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
