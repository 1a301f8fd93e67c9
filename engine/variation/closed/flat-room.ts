/** Room for one set of a flat finger at one posture; one a caller, never shared between two that run at once. */
import type { FlatFinger } from './flat-finger.ts'

/** What stands at the posture that was placed last, mount frame. */
export interface FlatRoom {
  readonly finger: FlatFinger
  /** The set: as `finger.numbers` lists them. */
  readonly numbers: Float64Array
  /** On which side of the line from p to s each dyad's pin q lies: +1 to the left. Kept for all postures and sets. */
  readonly sides: Float64Array
  /** Dyad that is nearest to its dead centre in the closed posture as drawn. */
  readonly nearest: number
  /** Four a part: cosine and sine of its turn, x and y of its origin (mm). */
  readonly poses: Float64Array
  /** x and y of each joint, mm. */
  readonly centres: Float64Array
  /** Three a part: its turn, and x and y of the velocity of its point at the mount's origin. */
  readonly motion: Float64Array
  /** Turn of the lead, rad. */
  readonly lead: { turn_rad: number }
  /** Round of the stop that was looked at last, and the normal of its edge. */
  readonly contact: { x: number; y: number; normalX: number; normalY: number }
}

/** @param sides,nearest as `FlatRoom` has them */
export function flatRoom(
  finger: FlatFinger,
  drawn: Float64Array,
  { sides, nearest }: { readonly sides: Float64Array; readonly nearest: number },
): FlatRoom {
  const poses = new Float64Array(4 * finger.parts_count)
  // The mount stands still.
  poses[0] = 1
  return {
    ...{ finger, numbers: drawn.slice(), sides, nearest, poses },
    ...{ centres: new Float64Array(2 * finger.joints_count), motion: new Float64Array(3 * finger.parts_count) },
    lead: { turn_rad: 0 },
    contact: { x: 0, y: 0, normalX: 0, normalY: 0 },
  }
}

/** x in the mount frame of the place whose numbers stand at `at`, on a part, mm. */
export function placeX({ numbers, poses }: FlatRoom, part: number, at: number): number {
  const pose = 4 * part
  return poses[pose + 2] + poses[pose] * numbers[at] - poses[pose + 1] * numbers[at + 1]
}

/** y of the same. */
export function placeY({ numbers, poses }: FlatRoom, part: number, at: number): number {
  const pose = 4 * part
  return poses[pose + 3] + poses[pose + 1] * numbers[at] + poses[pose] * numbers[at + 1]
}
