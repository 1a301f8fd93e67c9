/** What the wearer moves. */

import type { PartPoint } from './joints.ts'

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
