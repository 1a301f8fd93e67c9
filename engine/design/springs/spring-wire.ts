/** Wire and coil of a spring as the document states them. */
import type { CoilEnds, CoiledWire } from './coil.ts'
import type { Wire } from './wire-rows.ts'

interface StatedWire extends CoiledWire {
  readonly material: Wire
  /** Shot-peened: it bears more cycles. */
  readonly peened: boolean
}

/** The coil of a torsion spring. */
export interface TorsionWire extends StatedWire {
  readonly bodyTurns: number
  /** Both legs together, mm. */
  readonly legs_mm: number
  /** Springs of this kind side by side, which share the torque. */
  readonly springs_count: number
  /** Diameter of what the coil sits on, mm. */
  readonly arbour_mm: number
}

/** How a compression spring is kept upright: the share α of its length that bows as a pinned column does; none where it is guided. */
export const COIL_SEATS = {
  'between flats': 0.5,
  'flat and pivot': Math.SQRT1_2,
  'between pivots': 1,
  guided: undefined,
} as const

/** The coil of a compression spring. */
export interface CompressionWire extends StatedWire {
  /** All of them, those of the ends too. */
  readonly coils: number
  readonly ends: CoilEnds
  readonly seats: keyof typeof COIL_SEATS
  /** Pressed solid once by its maker, after which it sets no further. */
  readonly setRemoved: boolean
}

/** The coil of a tension spring. */
export interface TensionWire extends StatedWire {
  readonly bodyTurns: number
  /** Mean radii of the hook: of its loop, and of the bend from the body into it; absent when not stated. */
  readonly hook?: { readonly loop_mm: number; readonly bend_mm: number }
}
