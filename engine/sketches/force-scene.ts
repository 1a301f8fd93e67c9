/** Test support: a design made ready for force questions, and nodes of its path at a drive value, a margin or some steps on. */
import type { Design } from '../design/design.ts'
import { type ForceBench, forceBench } from '../forces/force-bench.ts'
import { type FramePair, framesAt } from '../forces/force-frame.ts'
import { assemble } from '../motion/assemble.ts'
import { addCouple } from '../motion/closure.ts'
import { type Condition, driveCoordinate } from '../motion/condition.ts'
import { type Mechanism, mechanismOf, placed } from '../motion/mechanism.ts'
import {
  derivativeOf,
  makePathBench,
  march,
  marchLength,
  type PathBench,
  type PathNode,
  reversed,
  tangentAt,
} from '../motion/path.ts'
import { settle } from '../motion/settle.ts'
import { toggleCouples, toggleMargin, type WatchedToggle, watchToggle } from '../motion/toggle-margin.ts'

export interface Scene {
  readonly mechanism: Mechanism
  readonly drawn: Float64Array
  readonly paths: PathBench
  readonly drive: Condition
  readonly bench: ForceBench
  readonly toggles: readonly WatchedToggle[]
}

/** Throws when the design does not go together: a fault of the test. */
export function scene(design: Design): Scene {
  const mechanism = mechanismOf(design)
  const { posture: drawn, problem } = assemble(mechanism)
  if (!drawn) throw new Error(problem.found)
  const drive = driveCoordinate(mechanism, drawn)
  const toggles = design.toggles.map((toggle) => watchToggle(mechanism, toggle, drawn))
  return { mechanism, drawn, paths: makePathBench(mechanism), drive, bench: forceBench(mechanism, drawn, drive), toggles }
}

/** The posture with the drive at a value, its tangent towards closed. */
export function atDrive({ mechanism, drawn, paths, drive }: Scene, aim: number): PathNode {
  return settledNode(paths, drawn, driveCoordinate(mechanism, drawn, aim), derivativeOf(mechanism, drawn, drive))
}

/** The posture with a toggle's margin at a value, its tangent towards smaller margins. */
export function atMargin({ mechanism, drawn, paths, toggles }: Scene, margin_rad: number, near: Float64Array = drawn): PathNode {
  const [toggle] = toggles
  const condition: Condition = {
    value: (posture) => toggleMargin(toggle, posture) - margin_rad,
    addDerivative: (row) => {
      for (const couple of toggleCouples(toggle)) addCouple(row, couple)
    },
  }
  const along = derivativeOf(mechanism, near, condition).map((value) => -value)
  return settledNode(paths, near, condition, along)
}

function settledNode(paths: PathBench, near: Float64Array, condition: Condition, along: Float64Array): PathNode {
  const posture = settle(paths, near, condition)?.posture
  const tangent = posture && tangentAt(paths, posture, along)
  if (!tangent) throw new Error('the posture does not settle')
  return { posture, tangent, arc_mm: 0 }
}

/** The node some marched steps from drawn, closing for positive counts; as far as the march goes. */
export function stepsOn({ mechanism, drawn, paths, drive }: Scene, steps_count: number): PathNode | undefined {
  const along = derivativeOf(mechanism, drawn, drive)
  const tangent = tangentAt(paths, drawn, along)
  if (!tangent) return undefined
  const closing: PathNode = { posture: drawn, tangent, arc_mm: 0 }
  let node = steps_count < 0 ? reversed(closing) : closing
  for (let left = Math.abs(steps_count); left > 0; left -= 1) {
    const next = march(paths, node, Math.min(1, left) * marchLength(mechanism, node.tangent))
    if (!next) break
    node = next
  }
  return steps_count < 0 ? reversed(node) : node
}

/** Both frames at a node; throws where two ways go on. */
export function framesOf({ bench }: Scene, node: PathNode): FramePair {
  const frames = framesAt(bench.room, node)
  if (!frames) throw new Error('two ways go on')
  return frames
}

/** Generalised force of a counter-clockwise couple on a part, its reaction on the mount. */
export function coupleOn(mechanism: Mechanism, part: number, couple_Nmm: number): Float64Array {
  const out = new Float64Array(mechanism.columns_count)
  out[3 * (part - 1) + 2] = couple_Nmm / mechanism.scale_mm
  return out
}

/** Generalised force of a force (N, mount frame) on a point given in a part's frame (mm). */
export function forceOn(
  mechanism: Mechanism,
  posture: Float64Array,
  on: { readonly part: number; readonly at: readonly [number, number]; readonly force: readonly [number, number] },
): Float64Array {
  const out = new Float64Array(mechanism.columns_count)
  const at = placed(posture, on.part, { x_mm: on.at[0], y_mm: on.at[1] })
  const [x, y] = on.force
  const arm = { x: at.x_mm - posture[3 * on.part], y: at.y_mm - posture[3 * on.part + 1] }
  out.set([x, y, (arm.x * y - arm.y * x) / mechanism.scale_mm], 3 * (on.part - 1))
  return out
}

/** The part of a design by its id; throws when there is none. */
export function partNamed({ design }: Mechanism, id: string): number {
  const index = design.parts.findIndex((part) => part.id === id)
  if (index < 0) throw new Error(`no part ${id}`)
  return index
}

/** The joint at a pin by the pin's id; throws when there is none. */
export function jointNamed({ design, joints }: Mechanism, id: string): number {
  const index = joints.findIndex((joint) => design.pins[joint.pin].id === id)
  if (index < 0) throw new Error(`no pin ${id}`)
  return index
}
