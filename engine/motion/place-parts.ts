/**
 * A posture by its plan: every part placed in closed form from the turn of the leading part, step by step. On which side each step lies is read off
 * a near posture, and never changed here.
 */
import { putOn, turnTo } from './part-places.ts'
import { placeStep } from './place-step.ts'
import type { PlanRoom } from './plan-room.ts'
import { blockTurnOf, sideOf } from './plan-side.ts'

/**
 * Places all parts that the plan can place.
 *
 * @param posture in: a near posture, which says on which side each step lies; out: the posture, where true comes back
 * @param leadTurn_rad counter-clockwise, of the leading part against the mount
 * @returns whether every step could close; `room.failedStep` says which could not
 */
export function placeParts(room: PlanRoom, posture: Float64Array, leadTurn_rad: number): boolean {
  readSides(room, posture)
  return placeOnSides(room, posture, leadTurn_rad)
}

/** Reads off a near posture on which side each step lies, once for several placings. */
export function readSides(room: PlanRoom, posture: Float64Array): void {
  const { steps } = room.plan
  for (let index = 0; index < steps.length; index++) {
    room.sides[index] = sideOf(steps[index], posture)
    room.blockTurns[index] = blockTurnOf(steps[index], posture)
  }
}

/** As `placeParts`, on the sides that `readSides` read; the posture that comes in counts only for its whole turns. */
export function placeOnSides(room: PlanRoom, posture: Float64Array, leadTurn_rad: number): boolean {
  const { lead, steps } = room.plan
  room.conditioning = 1
  room.failedStep = -1
  if (!lead) return false
  turnTo(room, posture, lead.part, leadTurn_rad)
  putOn(room, posture, lead.part, lead.own, lead.pivot.x_mm, lead.pivot.y_mm)
  for (let index = 0; index < steps.length; index++) {
    const sine = Math.min(placeStep(room, posture, index), Math.abs(room.sides[index]))
    if (sine < room.conditioning) room.conditioning = sine
    if (sine >= 0) continue
    room.conditioning = 0
    room.failedStep = index
    return false
  }
  return true
}

/**
 * Reads a closed posture into the room, so that rates can be taken there.
 *
 * @returns the least sine of its steps
 */
export function readParts(room: PlanRoom, posture: Float64Array): number {
  for (let part = 1; part < room.cosines.length; part++) {
    room.cosines[part] = Math.cos(posture[3 * part + 2])
    room.sines[part] = Math.sin(posture[3 * part + 2])
  }
  room.conditioning = 1
  for (const step of room.plan.steps) room.conditioning = Math.min(room.conditioning, Math.abs(sideOf(step, posture)))
  return room.conditioning
}
