import type { PathNode } from './path.ts'
import { nodeAt } from './trace.ts'
import type { TravelPath } from './travel-path.ts'

/** Nodes equally spaced along the arc, open to closed. A place that cannot be reached exactly is left out; the ends never are. */
export function evenNodes({ bench, nodes }: TravelPath, count: number): PathNode[] {
  const length = nodes[nodes.length - 1].arc_mm
  const found: PathNode[] = []
  for (let index = 0; index < count; index++) {
    if (index === count - 1) found.push(nodes[nodes.length - 1])
    else {
      const node = nodeAt(bench, nodes, (length * index) / (count - 1))
      if (node) found.push(node)
    }
  }
  return found
}
