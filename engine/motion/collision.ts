/**
 * Parts that run into each other over the travel.
 *
 * Two parts can meet where they lie side by side across the finger's width: where a slice of one and a slice of the other
 * overlap. Then their outlines must stay apart. Every posture of the travel is looked at; what comes and goes between two of
 * them (at most 4° of any part) can be missed. A part without an outline, or without a statement of where it lies across the
 * width, is not looked at, and is named.
 */
import type { Part } from '../design/design.ts'
import { limits } from '../numbers/limits.ts'
import type { Outline } from '../numbers/place-in-outline.ts'
import { type Mechanism, placed } from './mechanism.ts'
import { boxesMeet, boxOf, type Overlap, overlapOf } from './outline-overlap.ts'
import type { PathBench, PathNode } from './path.ts'
import { nodeWhereZero, type ValuedNode } from './trace.ts'

export interface Collision {
  readonly parts: readonly [number, number]
  /** Where they first reach into each other by `limits.collisionDepth_mm`, going from open to closed. */
  readonly first: PathNode
  readonly deepest: PathNode
  /** At the deepest node: how far the boundary of one reaches inside the other, and where in the mount frame. */
  readonly overlap: Overlap
}

export interface CollisionReport {
  readonly collisions: readonly Collision[]
  /** Parts that lack an outline or their place across the width; ascending. */
  readonly notLookedAt: readonly number[]
}

/** @param nodes of the travel, from open to closed */
export function collisionsOver(bench: PathBench, nodes: readonly PathNode[]): CollisionReport {
  const { parts } = bench.mechanism.design
  const seen = (part: Part): boolean => part.outline.length > 0 && (part.across?.length ?? 0) > 0
  const collisions = pairsOf(parts, seen).flatMap((pair) => collisionOf(bench, nodes, pair) ?? [])
  return { collisions, notLookedAt: parts.flatMap((part, index) => (seen(part) ? [] : [index])) }
}

function pairsOf(parts: readonly Part[], seen: (part: Part) => boolean): [number, number][] {
  return parts.flatMap((one, first) =>
    parts.flatMap((other, second): [number, number][] =>
      second > first && seen(one) && seen(other) && shareWidth(one, other) ? [[first, second]] : [],
    ),
  )
}

/** Faces that only slide on each other share no width. */
function shareWidth(one: Part, other: Part): boolean {
  return (one.across ?? []).some((a) =>
    (other.across ?? []).some((b) => Math.min(a.to_mm, b.to_mm) - Math.max(a.from_mm, b.from_mm) > limits.slidingFaces_mm),
  )
}

function collisionOf(bench: PathBench, nodes: readonly PathNode[], parts: readonly [number, number]): Collision | undefined {
  const pair = pairBench(bench.mechanism, parts)
  const overlaps = nodes.map(({ posture }) => pair.overlapAt(posture))
  const depths = overlaps.map((overlap) => overlap.depth_mm)
  const deepest = depths.reduce((most, depth, index) => (depth > depths[most] ? index : most), 0)
  if (depths[deepest] <= limits.collisionDepth_mm) return undefined
  const begins = depths.findIndex((depth) => depth > limits.collisionDepth_mm)
  const tooDeep = (node: PathNode): number => pair.overlapAt(node.posture).depth_mm - limits.collisionDepth_mm
  const at = (index: number): ValuedNode => ({ node: nodes[index], value: depths[index] - limits.collisionDepth_mm })
  const found = begins > 0 ? nodeWhereZero(bench, at(begins - 1), at(begins), tooDeep) : undefined
  return { parts, first: found ?? nodes[begins], deepest: nodes[deepest], overlap: overlaps[deepest] }
}

/** Room for the overlaps of one pair: the second outline is laid in the frame of the first, where that one and its box stand. */
function pairBench({ design }: Mechanism, [first, second]: readonly [number, number]) {
  const [outline, own] = [first, second].map((part) => flat(design.parts[part]))
  const box = boxOf(outline)
  const reach_mm = reachOf(outline) + reachOf(own)
  const laid = new Float64Array(own.length)
  const none: Overlap = { depth_mm: 0, x_mm: 0, y_mm: 0 }
  const overlapAt = (posture: Float64Array): Overlap => {
    const apart_x = posture[3 * second] - posture[3 * first]
    const apart_y = posture[3 * second + 1] - posture[3 * first + 1]
    if (apart_x * apart_x + apart_y * apart_y >= reach_mm * reach_mm) return none
    lay(own, inFrameOf(posture, first, second), laid)
    if (!boxesMeet(box, boxOf(laid))) return none
    const { depth_mm, x_mm, y_mm } = overlapOf(outline, laid)
    return { depth_mm, ...placed(posture, first, { x_mm, y_mm }) }
  }
  return { overlapAt }
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

interface Pose {
  readonly x_mm: number
  readonly y_mm: number
  readonly turn_rad: number
}

/** Where the second part stands, seen from the first. */
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
