/**
 * Closure equations of the loops and their derivatives.
 *
 * Pin joint (2 rows):  x_b(hole) − x_a(pin) = offset        Slot (1 row):  n_b · (x_a(pin) − x_b(slot middle)) = offset
 * with n_b the slot's direction turned by +90°. The derivative's transpose takes pin forces to forces on the parts (virtual
 * work), so motion and statics share one matrix. Columns: three a moving part; angles are counted as scale_mm · rad so that
 * all columns are in mm.
 */
import type { Point } from '../design/design.ts'
import type { Vector } from '../numbers/vector.ts'
import { type Joint, type Mechanism, placed } from './mechanism.ts'
import { type PartTurns, readPartTurns } from './part-turns.ts'

/** A mechanism with room for the turns of its parts. */
export interface ClosureRoom {
  readonly mechanism: Mechanism
  readonly partTurns: PartTurns
}

/** Residual of every row, mm. `offsets` are the clearance take-ups (same rows), or undefined for none. */
export function closureGap(
  { mechanism, partTurns }: ClosureRoom,
  posture: Float64Array,
  offsets: Float64Array | undefined,
  out: Float64Array,
): void {
  const { joints } = mechanism
  readPartTurns(posture, partTurns)
  for (let index = 0; index < joints.length; index++) {
    const joint = joints[index]
    const { a, b, atA, atB } = joint
    const cos_a = partTurns[2 * a]
    const sin_a = partTurns[2 * a + 1]
    const cos_b = partTurns[2 * b]
    const sin_b = partTurns[2 * b + 1]
    const dx = posture[3 * b] + cos_b * atB.x_mm - sin_b * atB.y_mm - (posture[3 * a] + cos_a * atA.x_mm - sin_a * atA.y_mm)
    const dy =
      posture[3 * b + 1] + sin_b * atB.x_mm + cos_b * atB.y_mm - (posture[3 * a + 1] + sin_a * atA.x_mm + cos_a * atA.y_mm)
    if (joint.kind === 'pin') {
      out[joint.row] = dx
      out[joint.row + 1] = dy
    } else {
      const along = slotAngle(posture, joint)
      out[joint.row] = dx * Math.sin(along) - dy * Math.cos(along)
    }
  }
  if (offsets) for (let row = 0; row < mechanism.rows_count; row++) out[row] -= offsets[row]
}

/** Direction of a slot in the mount frame, rad. */
export function slotAngle(posture: Float64Array, joint: Joint): number {
  return posture[3 * joint.b + 2] + joint.along_rad
}

/**
 * Derivative of the closure rows, written into the top `rows_count` rows of a row-major matrix `columns_count` wide.
 * The rest of the matrix is left alone.
 */
export function closureDerivative(mechanism: Mechanism, posture: Float64Array, out: Float64Array): void {
  out.fill(0, 0, mechanism.rows_count * mechanism.columns_count)
  for (const joint of mechanism.joints) {
    if (joint.kind === 'pin') pinRows(mechanism, joint, posture, out)
    else slotRow(mechanism, joint, posture, out)
  }
}

function pinRows(mechanism: Mechanism, joint: Joint, posture: Float64Array, out: Float64Array): void {
  const { columns_count: width, scale_mm } = mechanism
  for (let sign = -1; sign <= 1; sign += 2) {
    const part = sign > 0 ? joint.b : joint.a
    if (part === 0) continue
    const at = sign > 0 ? joint.atB : joint.atA
    const c = Math.cos(posture[3 * part + 2])
    const s = Math.sin(posture[3 * part + 2])
    const column = joint.row * width + 3 * (part - 1)
    out[column] = sign
    out[column + 2] = (-sign * (s * at.x_mm + c * at.y_mm)) / scale_mm
    out[column + width + 1] = sign
    out[column + width + 2] = (sign * (c * at.x_mm - s * at.y_mm)) / scale_mm
  }
}

function slotRow(mechanism: Mechanism, joint: Joint, posture: Float64Array, out: Float64Array): void {
  const along = slotAngle(posture, joint)
  const normal = { x: -Math.sin(along), y: Math.cos(along) }
  const at = placed(posture, joint.a, joint.atA)
  const row = { mechanism, posture, out, start: joint.row * mechanism.columns_count }
  addForce(row, { part: joint.a, at, force: normal })
  addForce(row, { part: joint.b, at, force: { x: -normal.x, y: -normal.y } })
}

/** A row that forces are added to: a closure row, or the generalised force of a load. */
export interface ForceRow {
  readonly mechanism: Mechanism
  readonly posture: Float64Array
  readonly out: Float64Array
  /** Where the row starts in `out`. */
  readonly start: number
}

/**
 * Adds a force on a part at a point of the mount frame: its two components, and its moment about the part's origin over
 * scale_mm. Nothing for the mount.
 */
export function addForce(row: ForceRow, on: { readonly part: number; readonly at: Point; readonly force: Vector }): void {
  if (on.part === 0) return
  const { mechanism, posture, out } = row
  const column = row.start + 3 * (on.part - 1)
  const arm_x = on.at.x_mm - posture[3 * on.part]
  const arm_y = on.at.y_mm - posture[3 * on.part + 1]
  out[column] += on.force.x
  out[column + 1] += on.force.y
  out[column + 2] += (arm_x * on.force.y - arm_y * on.force.x) / mechanism.scale_mm
}

/** Adds a counter-clockwise couple on a part. Nothing for the mount. */
export function addCouple(row: ForceRow, on: { readonly part: number; readonly couple: number }): void {
  if (on.part !== 0) row.out[row.start + 3 * (on.part - 1) + 2] += on.couple / row.mechanism.scale_mm
}
