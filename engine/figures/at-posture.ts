/** Any posture of the travel, and the forces there for a question: what a pointer on the scale asks for. */
import type { Design } from '../design/design.ts'
import { forceBench } from '../forces/force-bench.ts'
import { closedFinger } from '../forces/states.ts'
import { assemble } from '../motion/assemble.ts'
import { mechanismOf } from '../motion/mechanism.ts'
import { makePathBench, type PathNode } from '../motion/path.ts'
import { nodeAt } from '../motion/trace.ts'
import { travelPath } from '../motion/travel-path.ts'
import type { Evaluation, ForcePicture, Posture, Question } from './evaluation.ts'
import { drawForces, type Ready } from './force-picture.ts'
import { postureOf } from './travel-report.ts'

/** The path of a design is worked out once and kept as long as the design is: a memory, not a state. */
const known = new WeakMap<Design, Ready | 'cannot move'>()

/** Keeps a path that was followed for an evaluation, so that its postures are not worked out by following it again. */
export function keepWay(design: Design, way: Ready): void {
  known.set(design, way)
}

function readyFor(design: Design): Ready | undefined {
  const found = known.get(design) ?? prepareDesign(design)
  known.set(design, found)
  return found === 'cannot move' ? undefined : found
}

function prepareDesign(design: Design): Ready | 'cannot move' {
  const mechanism = mechanismOf(design)
  if (mechanism.columns_count !== mechanism.rows_count + 1) return 'cannot move'
  const { posture } = assemble(mechanism)
  const path = posture && travelPath(makePathBench(mechanism), posture)
  if (!path) return 'cannot move'
  const bench = forceBench(mechanism, posture, path.drive)
  return { path, bench, closed: closedFinger(path, bench) }
}

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
  return drawForces(ready, nodeOf(ready, arc_ratio), question)
}
