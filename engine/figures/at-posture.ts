/** Any posture of the travel, and the forces there for a question: what a pointer on the scale asks for. */
import type { PathNode } from '../motion/path.ts'
import { nodeAt } from '../motion/trace.ts'
import type { Evaluation, ForcePicture, Posture, Question } from './evaluation.ts'
import { drawForces, type Ready } from './force-picture.ts'
import { readyFor } from './ready-finger.ts'
import { postureOf } from './travel-report.ts'

function nodeOf({ path }: Ready, arc_ratio: number): PathNode {
  const { nodes, beyond, bench } = path
  const closed_mm = nodes[nodes.length - 1].arc_mm
  const all = arc_ratio > 1 ? beyond : nodes
  const last = all[all.length - 1]
  const arc_mm = Math.min(Math.max(0, arc_ratio) * closed_mm, last.arc_mm)
  return nodeAt(bench, all, arc_mm) ?? last
}

/**
 * Any posture of the travel.
 *
 * @param arc_ratio share of the travel's arc: 0 open, 1 closed, above 1 beyond the stop; kept within what was followed
 * @throws when the evaluation has no travel: ask `evaluation.travel` first
 */
export function postureAt(evaluation: Evaluation, arc_ratio: number): Posture {
  const ready = readyFor(evaluation.design)
  if (!ready) throw new Error('postureAt: the finger cannot be moved')
  return postureOf(ready.path, nodeOf(ready, arc_ratio))
}

/**
 * Forces at any posture of the travel for a question; see `Question`.
 *
 * @throws when the evaluation has no travel, or the load case does not exist
 */
export function forcesAt(evaluation: Evaluation, arc_ratio: number, question: Question): ForcePicture {
  const ready = readyFor(evaluation.design)
  if (!ready) throw new Error('forcesAt: the finger cannot be moved')
  const picture = drawForces(ready, nodeOf(ready, arc_ratio), question)
  if (question.kind === 'return' || picture.stops.length === 0) return picture
  const most = evaluation.figures.find(({ id }) => id === `loadCase.${question.loadCase}.stopForceMost`)?.value
  return typeof most === 'number' ? { ...picture, stops: picture.stops.map((stop) => ({ ...stop, most_N: most })) } : picture
}
