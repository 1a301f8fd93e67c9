/**
 * Where on the way a finger jams: the first posture, going from open towards dead centre and past it, at which the return reserve is
 * no longer positive. From rest this is the jam angle, moving the running jam angle of every toggle there.
 */
import type { PathNode } from '../motion/path.ts'
import { nodeWhereZero } from '../motion/trace.ts'
import type { TravelPath } from '../motion/travel-path.ts'
import { framesAt } from './closing-frames.ts'
import type { ForceBench } from './force-bench.ts'
import { returnReserve } from './return-reserve.ts'

export type JamKind = 'fromRest' | 'moving'

export type Jam =
  | { readonly kind: 'at'; readonly node: PathNode }
  /** The reserve stays positive as far as the path was followed. */
  | { readonly kind: 'never' }
  /** The reserve is nowhere positive: it does not return even when open. */
  | { readonly kind: 'everywhere' }
  | { readonly kind: 'unknown' }

/** Reserve at a node, N·mm a pin, or undefined when no state was found there. */
export function reserveAt(bench: ForceBench, node: PathNode, kind: JamKind): number | undefined {
  const frames = framesAt(bench.mechanism, node)
  return frames && returnReserve(bench, frames.opening)?.[kind]?.amplitude
}

/**
 * @param known reserves at the nodes of the travel, where they have been worked out already
 */
export function findJam(bench: ForceBench, path: TravelPath, kind: JamKind, known: readonly (number | undefined)[]): Jam {
  let last: PathNode | undefined
  let lastReserve: number | undefined
  for (const [index, node] of [...path.nodes, ...path.beyond.slice(1)].entries()) {
    const reserve = known[index] ?? reserveAt(bench, node, kind)
    if (reserve === undefined) return { kind: 'unknown' }
    if (reserve <= 0) {
      if (!last || lastReserve === undefined) return { kind: 'everywhere' }
      const jam = nodeWhereZero(path.bench, last, node, (candidate) => reserveAt(bench, candidate, kind))
      return jam ? { kind: 'at', node: jam } : { kind: 'unknown' }
    }
    last = node
    lastReserve = reserve
  }
  return { kind: 'never' }
}
