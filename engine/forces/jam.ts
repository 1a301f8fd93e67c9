/**
 * Where on the way a finger jams: the first posture, going from open towards dead centre and past it, at which the return reserve is
 * no longer positive. From rest this is the jam angle, moving the running jam angle of every toggle there.
 */
import type { PathNode } from '../motion/path.ts'
import { toggleMargin } from '../motion/toggle-margin.ts'
import { nodeWhereZero, type ValuedNode } from '../motion/trace.ts'
import type { TravelPath } from '../motion/travel-path.ts'
import type { ForceBench } from './force-bench.ts'
import { framesAt } from './force-frame.ts'
import { movingAmplitude, restAmplitude, returnQuestion } from './return-reserve.ts'

export type JamKind = 'fromRest' | 'moving'

export type Jam =
  | { readonly kind: 'at'; readonly node: PathNode }
  /** The reserve stays positive as far as the path was followed. */
  | { readonly kind: 'never' }
  /** Nor does it up to here, where the toggle comes nearest to dead centre and turns back: beyond it no jam is one of being too near. */
  | { readonly kind: 'turnsBack'; readonly node: PathNode }
  /** The reserve is nowhere positive: it does not return even when open. */
  | { readonly kind: 'everywhere' }
  | { readonly kind: 'unknown' }

/** Reserve at a node, N·mm a pin, or undefined when no state was found there. */
export function reserveAt(bench: ForceBench, node: PathNode, kind: JamKind): number | undefined {
  const frames = framesAt(bench.room, node)
  const question = frames && returnQuestion(bench, frames.opening)
  if (!question) return undefined
  return kind === 'moving' ? movingAmplitude(bench, question) : restAmplitude(bench, question)
}

/**
 * @param surveyed nodes of the travel, open to closed, with their reserves
 */
export function findJam(bench: ForceBench, path: TravelPath, kind: JamKind, surveyed: readonly SurveyedNode[]): Jam {
  let last: ValuedNode | undefined
  const beyond = path.beyond.slice(1).map((node): SurveyedNode => ({ node }))
  for (const [index, next] of [...surveyed, ...beyond].entries()) {
    if (index >= surveyed.length && last && comesNoNearer(path, last.node, next.node))
      return { kind: 'turnsBack', node: last.node }
    const reserve = next.reserve ?? reserveAt(bench, next.node, kind)
    if (reserve === undefined) return { kind: 'unknown' }
    if (reserve <= 0) {
      if (!last) return { kind: 'everywhere' }
      const here = { node: next.node, value: reserve }
      const jam = nodeWhereZero(path.bench, last, here, (candidate) => reserveAt(bench, candidate, kind))
      return jam ? { kind: 'at', node: jam } : { kind: 'unknown' }
    }
    last = { node: next.node, value: reserve }
  }
  return { kind: 'never' }
}

/** Whether the toggle that is watched first lies no nearer to dead centre than it did before. */
function comesNoNearer({ toggles }: TravelPath, last: PathNode, next: PathNode): boolean {
  return toggles.length > 0 && toggleMargin(toggles[0], next.posture) >= toggleMargin(toggles[0], last.posture)
}

export interface SurveyedNode {
  readonly node: PathNode
  /** Absent where it is still to be worked out. */
  readonly reserve?: number | undefined
}
