/**
 * Slip angle of a load case: going outward from the jam, the first posture at which its keeper would need more than it is allowed.
 * Loads that follow a part follow it; the stop is taken away.
 */
import type { LoadCase } from '../design/design.ts'
import type { PathNode } from '../motion/path.ts'
import { nodeWhereZero } from '../motion/trace.ts'
import type { TravelPath } from '../motion/travel-path.ts'
import { effortToHold, portRow } from './effort.ts'
import type { ForceBench } from './force-bench.ts'
import { framesAt } from './force-frame.ts'
import { addLoadCase } from './loads.ts'

export type Slip =
  | { readonly kind: 'at'; readonly node: PathNode }
  /** Already at the jam the keeper needs more than allowed: there is no window. */
  | { readonly kind: 'noWindow' }
  /** The keeper never needs more than allowed. */
  | { readonly kind: 'never' }
  | { readonly kind: 'unknown' }

/**
 * @param jam where the way outward begins: the jam, or the last node followed when there is none
 */
export function findSlip(bench: ForceBench, path: TravelPath, loadCase: LoadCase, jam: PathNode): Slip {
  const { keeper } = loadCase
  if (!keeper) return { kind: 'unknown' }
  const excess = (node: PathNode): number | undefined => {
    const sustaining = sustainingAt(bench, node, loadCase)
    return sustaining === undefined ? undefined : sustaining - keeper.allowed
  }
  const outward = [...path.nodes, ...path.beyond.slice(1)].filter((node) => node.arc_mm < jam.arc_mm).reverse()
  const atJam = excess(jam)
  if (atJam === undefined) return { kind: 'unknown' }
  if (atJam > 0) return { kind: 'noWindow' }
  let last = { node: jam, value: atJam }
  for (const node of outward) {
    const now = excess(node)
    if (now === undefined) return { kind: 'unknown' }
    if (now > 0) {
      const slip = nodeWhereZero(path.bench, { node, value: now }, last, excess)
      return slip ? { kind: 'at', node: slip } : { kind: 'unknown' }
    }
    last = { node, value: now }
  }
  return { kind: 'never' }
}

/** Load at the keeper that just keeps the case from opening at a node, 0 when none is needed; the drive gives nothing. */
export function sustainingAt(bench: ForceBench, node: PathNode, loadCase: LoadCase): number | undefined {
  const frames = framesAt(bench.room, node)
  if (!frames || !loadCase.keeper) return undefined
  const port = portRow(bench, frames.opening, loadCase.keeper.port)
  const effort = effortToHold(bench, frames.opening, { port, addLoads: (row) => addLoadCase(row, loadCase) })
  return effort?.amplitude === undefined ? undefined : Math.max(0, effort.amplitude)
}
