/** Where placed parts stand, and how one is put: turn, arm, point. */
import type { PartPoint, Point } from '../design/design.ts'
import type { PlanRoom } from './plan-room.ts'
import type { Arm } from './plan-step.ts'

/** Turns a part, by whole turns nearest to the turn that stands in the posture. */
export function turnTo(room: PlanRoom, posture: Float64Array, part: number, angle: number): void {
  setTurn(posture, part, angle)
  room.cosines[part] = Math.cos(angle)
  room.sines[part] = Math.sin(angle)
}

function setTurn(posture: Float64Array, part: number, angle: number): void {
  const index = 3 * part + 2
  const turns = (posture[index] - angle) / (2 * Math.PI)
  posture[index] = turns > 0.5 || turns < -0.5 ? angle + 2 * Math.PI * Math.round(turns) : angle
}

/** Turns an arm so that it points along (x, y), a vector of its own length; cosine and sine follow without their functions. */
export function pointArm(room: PlanRoom, posture: Float64Array, arm: Arm, x: number, y: number): void {
  const { part, reach, length_mm } = arm
  const inverse = 1 / (length_mm * length_mm)
  setTurn(posture, part, Math.atan2(y, x) - arm.bearing_rad)
  room.cosines[part] = (x * reach.x_mm + y * reach.y_mm) * inverse
  room.sines[part] = (y * reach.x_mm - x * reach.y_mm) * inverse
}

/** Puts a turned part so that its own point lies at (x, y) of the mount frame, mm. */
export function putOn(room: PlanRoom, posture: Float64Array, part: number, own: Point, x: number, y: number): void {
  const c = room.cosines[part]
  const s = room.sines[part]
  posture[3 * part] = x - c * own.x_mm + s * own.y_mm
  posture[3 * part + 1] = y - s * own.x_mm - c * own.y_mm
}

/** x in the mount frame of a point of a placed part, mm. */
export function xOf(room: PlanRoom, posture: Float64Array, { part, at }: PartPoint): number {
  return posture[3 * part] + room.cosines[part] * at.x_mm - room.sines[part] * at.y_mm
}

/** y in the mount frame of a point of a placed part, mm. */
export function yOf(room: PlanRoom, posture: Float64Array, { part, at }: PartPoint): number {
  return posture[3 * part + 1] + room.sines[part] * at.x_mm + room.cosines[part] * at.y_mm
}
