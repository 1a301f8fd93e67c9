/** A design made ready for questions at any posture of its travel. */
import type { Design } from '../design/design.ts'
import { forceBench } from '../forces/force-bench.ts'
import { closedFinger } from '../forces/states.ts'
import { assemble } from '../motion/assemble.ts'
import { mechanismOf } from '../motion/mechanism.ts'
import { makePathBench } from '../motion/path.ts'
import { travelPath } from '../motion/travel-path.ts'
import type { Ready } from './force-picture.ts'

export type { Ready } from './force-picture.ts'

/** The path of a design is worked out once and kept as long as the design is: a memory, not a state. */
const known = new WeakMap<Design, Ready | 'cannot move'>()

/** Keeps a path that was followed for an evaluation, so that its postures are not worked out by following it again. */
export function keepWay(design: Design, way: Ready): void {
  known.set(design, way)
}

/** The finger ready to be moved; undefined where it cannot be moved. */
export function readyFor(design: Design): Ready | undefined {
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
