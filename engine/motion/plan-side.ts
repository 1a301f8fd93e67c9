/** Which of its two ways each step of a plan goes, read off a posture. */

import { placed } from './mechanism.ts'
import type { PlanStep, SlotOnPinStep } from './plan-step.ts'

/**
 * Signed sine of the step's angle: its sign is the side, its size how far the step stands from the place where both sides
 * meet. For a dyad of the angle from the first arm to the second; for slots the cosine between arm and slot.
 */
export function sideOf(step: PlanStep, posture: Float64Array): number {
  switch (step.kind) {
    case 'dyad':
      return Math.sin(turned(posture, step.second) - turned(posture, step.first))
    case 'pin in slot':
      return Math.cos(turned(posture, step.arm) - posture[3 * step.slot.part + 2] - step.along_rad)
    case 'slot on pin':
      return runOfSlot(step, posture)
    case 'slider': {
      const slotted = step.slotted === 'block' ? step.block : step.guide
      return Math.cos(turned(posture, step.rod) - posture[3 * slotted + 2] - step.along_rad)
    }
  }
}

function turned(posture: Float64Array, arm: { readonly part: number; readonly bearing_rad: number }): number {
  return posture[3 * arm.part + 2] + arm.bearing_rad
}

function runOfSlot(step: SlotOnPinStep, posture: Float64Array): number {
  const pivot = placed(posture, step.pivot.part, step.pivot.at)
  const target = placed(posture, step.target.part, step.target.at)
  const bearing = Math.atan2(target.y_mm - pivot.y_mm, target.x_mm - pivot.x_mm)
  return Math.cos(posture[3 * step.part + 2] + step.along_rad - bearing)
}

/** Turn of a slider's block against its guide: that of the two it can have which is nearer to the posture's. */
export function blockTurnOf(step: PlanStep, posture: Float64Array): number {
  if (step.kind !== 'slider') return 0
  const near = posture[3 * step.block + 2] - posture[3 * step.guide + 2]
  const [one, other] = step.turns_rad
  return Math.cos(near - one) >= Math.cos(near - other) ? one : other
}
