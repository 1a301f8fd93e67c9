/** How far a pin still is from the nearer end of its slot. */
import { slotAngle } from './closure.ts'
import { type Joint, placed } from './mechanism.ts'

/** @returns mm along the slot; negative once the pin has run past the end */
export function slotRoom(posture: Float64Array, joint: Joint): number {
  const along = slotAngle(posture, joint)
  const pin = placed(posture, joint.a, joint.atA)
  const middle = placed(posture, joint.b, joint.atB)
  const run = (pin.x_mm - middle.x_mm) * Math.cos(along) + (pin.y_mm - middle.y_mm) * Math.sin(along)
  return joint.reach_mm - Math.abs(run)
}
