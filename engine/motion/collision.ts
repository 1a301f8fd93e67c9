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
import type { Overlap } from './outline-overlap.ts'
import { isSeen, outlinePair, type PartPair, pairsThatMayMeet } from './outline-pair.ts'
import type { PathBench, PathNode } from './path.ts'
import { nodeWhereZero, type ValuedNode } from './trace.ts'

export interface Collision {
  readonly parts: PartPair
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
  const collisions = pairsThatMayMeet(parts).flatMap((pair) => collisionOf(bench, nodes, pair) ?? [])
  return { collisions, notLookedAt: unseenParts(parts) }
}

/** Parts that cannot be looked at, by their places. */
export function unseenParts(parts: readonly Part[]): readonly number[] {
  return parts.flatMap((part, index) => (isSeen(part) ? [] : [index]))
}

function collisionOf(bench: PathBench, nodes: readonly PathNode[], parts: PartPair): Collision | undefined {
  const pair = outlinePair(bench.mechanism, parts)
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
