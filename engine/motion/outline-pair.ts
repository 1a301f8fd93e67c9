/** Two parts whose outlines may meet, laid over each other at any posture. */
import type { Part } from '../design/design.ts'
import { limits } from '../numbers/limits.ts'
import { distanceToEdge, type Outline } from '../numbers/place-in-outline.ts'
import { type Mechanism, placed } from './mechanism.ts'
import { boxesMeet, boxOf, type Overlap, overlapOf } from './outline-overlap.ts'

/** A pair of parts, by their places in the design. */
export type PartPair = readonly [number, number]

/** Whether a part can be looked at: its outline and its place across the width are stated. */
export function isSeen(part: Part): boolean {
  return part.outline.length > 0 && (part.across?.length ?? 0) > 0
}

/** Pairs of parts that can be looked at and lie side by side across the width; in the order of the parts. */
export function pairsThatMayMeet(parts: readonly Part[]): readonly PartPair[] {
  return parts.flatMap((one, first) =>
    parts.flatMap((other, second): PartPair[] =>
      second > first && isSeen(one) && isSeen(other) && shareWidth(one, other) ? [[first, second]] : [],
    ),
  )
}

/** Faces that only slide on each other share no width. */
function shareWidth(one: Part, other: Part): boolean {
  return (one.across ?? []).some((a) =>
    (other.across ?? []).some((b) => Math.min(a.to_mm, b.to_mm) - Math.max(a.from_mm, b.from_mm) > limits.slidingFaces_mm),
  )
}

/** Where the second part of a pair stands, seen from the first. */
export interface Pose {
  readonly x_mm: number
  readonly y_mm: number
  readonly turn_rad: number
}

/** Room for one pair: the second outline is laid in the frame of the first, where that one and its box stand. */
export interface OutlinePair {
  readonly overlapAt: (posture: Float64Array) => Overlap
  /** Distance of outlines that do not overlap, mm. */
  readonly distanceAt: (posture: Float64Array) => number
  readonly poseAt: (posture: Float64Array) => Pose
  /** Farthest that any corner of the second can have gone between two poses, seen from the first, mm. */
  readonly moved_mm: (from: Pose, to: Pose) => number
}

/** Lays out a pair. */
export function outlinePair({ design }: Mechanism, [first, second]: PartPair): OutlinePair {
  const [outline, own] = [first, second].map((part) => flat(design.parts[part]))
  const box = boxOf(outline)
  const ownReach_mm = reachOf(own)
  const reach_mm = reachOf(outline) + ownReach_mm
  const laid = new Float64Array(own.length)
  const none: Overlap = { depth_mm: 0, x_mm: 0, y_mm: 0 }
  const poseAt = (posture: Float64Array): Pose => inFrameOf(posture, first, second)
  const overlapAt = (posture: Float64Array): Overlap => {
    const apart_x = posture[3 * second] - posture[3 * first]
    const apart_y = posture[3 * second + 1] - posture[3 * first + 1]
    if (apart_x * apart_x + apart_y * apart_y >= reach_mm * reach_mm) return none
    lay(own, poseAt(posture), laid)
    if (!boxesMeet(box, boxOf(laid))) return none
    const { depth_mm, x_mm, y_mm } = overlapOf(outline, laid)
    return { depth_mm, ...placed(posture, first, { x_mm, y_mm }) }
  }
  const distanceAt = (posture: Float64Array): number => {
    lay(own, poseAt(posture), laid)
    return Math.min(nearestCorner(outline, laid), nearestCorner(laid, outline))
  }
  const moved_mm = (from: Pose, to: Pose): number =>
    Math.hypot(to.x_mm - from.x_mm, to.y_mm - from.y_mm) + ownReach_mm * Math.abs(to.turn_rad - from.turn_rad)
  return { overlapAt, distanceAt, poseAt, moved_mm }
}

/** Outlines that do not overlap are nearest at a corner of one of them. */
function nearestCorner(corners: Outline, other: Outline): number {
  let least = Number.POSITIVE_INFINITY
  for (let at = 0; at < corners.length; at += 2) least = Math.min(least, distanceToEdge(other, corners[at], corners[at + 1]))
  return least
}

function flat(part: Part): Outline {
  const corners = new Float64Array(2 * part.outline.length)
  for (let index = 0; index < part.outline.length; index++) {
    corners[2 * index] = part.outline[index].x_mm
    corners[2 * index + 1] = part.outline[index].y_mm
  }
  return corners
}

/** Farthest corner from the part's own origin, mm. */
function reachOf(outline: Outline): number {
  let most = 0
  for (let at = 0; at < outline.length; at += 2) most = Math.max(most, Math.hypot(outline[at], outline[at + 1]))
  return most
}

function inFrameOf(posture: Float64Array, first: number, second: number): Pose {
  const c = Math.cos(posture[3 * first + 2])
  const s = Math.sin(posture[3 * first + 2])
  const x = posture[3 * second] - posture[3 * first]
  const y = posture[3 * second + 1] - posture[3 * first + 1]
  return { x_mm: c * x + s * y, y_mm: c * y - s * x, turn_rad: posture[3 * second + 2] - posture[3 * first + 2] }
}

function lay(own: Outline, { x_mm, y_mm, turn_rad }: Pose, out: Outline): void {
  const c = Math.cos(turn_rad)
  const s = Math.sin(turn_rad)
  for (let at = 0; at < own.length; at += 2) {
    out[at] = x_mm + c * own[at] - s * own[at + 1]
    out[at + 1] = y_mm + s * own[at] + c * own[at + 1]
  }
}
