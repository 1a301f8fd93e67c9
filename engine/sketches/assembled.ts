/** Test support: a design put together, and how fast its parts move when the first part after the mount turns. */
import type { Design } from '../design/design.ts'
import { assemble } from '../motion/assemble.ts'
import { driveCoordinate } from '../motion/condition.ts'
import { type Mechanism, mechanismOf } from '../motion/mechanism.ts'
import { derivativeOf, makePathBench, tangentAt } from '../motion/path.ts'
import { makeBench, settle } from '../motion/settle.ts'

export interface Put {
  readonly mechanism: Mechanism
  readonly posture: Float64Array
}

/** Throws when it does not go together: a fault of the test. */
export function assembled(design: Design): Put {
  const mechanism = mechanismOf(design)
  const { posture, problem } = assemble(mechanism)
  if (!posture) throw new Error(problem.found)
  return { mechanism, posture }
}

/** The posture with the drive's coordinate at a value that is near enough to be settled at once; throws otherwise. */
export function driven({ mechanism, posture }: Put, aim: number): Float64Array {
  const settled = settle(makeBench(mechanism), posture, driveCoordinate(mechanism, posture, aim))
  if (!settled) throw new Error(`does not settle at ${aim}`)
  return settled.posture
}

/** Rates of all parts, laid out as a posture, for part 1 turning counter-clockwise at `speed`; by dense Newton's matrix. */
export function rates({ mechanism, posture }: Put, speed: number): Float64Array {
  const along = derivativeOf(mechanism, posture, driveCoordinate(mechanism, posture)).map((value) => -value)
  const tangent = tangentAt(makePathBench(mechanism, 'newton'), posture, along)!
  const out = new Float64Array(posture.length)
  const perTangent = (speed * mechanism.scale_mm) / tangent[2]
  tangent.forEach((value, column) => {
    out[column + 3] = (column % 3 === 2 ? value / mechanism.scale_mm : value) * perTangent
  })
  return out
}
