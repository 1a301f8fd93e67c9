/**
 * How near parts come to each other over the travel without touching.
 *
 * Looked at are the pairs and postures of `collisionsOver`. Between two of them no corner goes farther than its part has moved, so a posture at
 * which a pair cannot be nearer than the nearest so far is passed over: of a travel a few are measured.
 */
import { outlinePair, type PartPair, pairsThatMayMeet } from './outline-pair.ts'
import type { PathBench, PathNode } from './path.ts'

/** Where two parts come nearest. */
export interface Nearest {
  readonly parts: PartPair
  readonly node: PathNode
  /** mm; below nothing where they overlap, by how deep. */
  readonly clearance_mm: number
}

/** @param nodes of the travel, from open to closed. @returns undefined where no two parts share a slice across the width */
export function nearestOver(bench: PathBench, nodes: readonly PathNode[]): Nearest | undefined {
  let nearest: Nearest | undefined
  for (const parts of pairsThatMayMeet(bench.mechanism.design.parts))
    nearest = nearestOf(bench, { nodes, parts, nearest }) ?? nearest
  return nearest
}

interface Looked {
  readonly nodes: readonly PathNode[]
  readonly parts: PartPair
  /** Of the pairs before. */
  readonly nearest: Nearest | undefined
}

/** The nearest place of a pair, where it is nearer than the pairs before. */
function nearestOf(bench: PathBench, { nodes, parts, nearest: before }: Looked): Nearest | undefined {
  const pair = outlinePair(bench.mechanism, parts)
  let nearest: Nearest | undefined
  let seen = pair.poseAt(nodes[0].posture)
  let atSeen_mm = Number.NEGATIVE_INFINITY
  for (const node of nodes) {
    const least_mm = (nearest ?? before)?.clearance_mm ?? Number.POSITIVE_INFINITY
    const pose = pair.poseAt(node.posture)
    if (atSeen_mm - pair.moved_mm(seen, pose) >= least_mm) continue
    const { depth_mm } = pair.overlapAt(node.posture)
    const clearance_mm = depth_mm > 0 ? -depth_mm : pair.distanceAt(node.posture)
    seen = pose
    atSeen_mm = clearance_mm
    if (clearance_mm < least_mm) nearest = { parts, node, clearance_mm }
  }
  return nearest
}
