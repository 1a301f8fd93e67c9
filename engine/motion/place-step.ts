/**
 * One step of a plan in closed form.
 *
 *                    ● B                     with d = C − A, p = |d|², arms a and b:
 *             a   ╱     ╲  b                 B = A + d (p + a² − b²) / 2p ± d⊥ √(((a+b)² − p)(p − (a−b)²)) / 2p
 *          A ●───────────────● C             The root and the division do not wait for each other.
 *
 * Where the arms stand in line the two meeting points run into one and the root loses half of its digits: a step tells the sine of the angle
 * between the arms (or between an arm and the normal of its slot).
 */
import type { PartPoint } from '../design/design.ts'
import { pointArm, putOn, turnTo, xOf, yOf } from './part-places.ts'
import type { PlanRoom } from './plan-room.ts'
import type { Arm, DyadStep, PinInSlotStep, PlanStep, SliderStep, SlotOnPinStep } from './plan-step.ts'

/** Sine of the step's angle, or −1 where it cannot close. */
export function placeStep(room: PlanRoom, posture: Float64Array, index: number): number {
  const step: PlanStep = room.plan.steps[index]
  const side = room.sides[index] < 0 ? -1 : 1
  switch (step.kind) {
    case 'dyad':
      return placeDyad(room, posture, step, side)
    case 'pin in slot':
      return placePinInSlot(room, posture, step, side)
    case 'slot on pin':
      return placeSlotOnPin(room, posture, step, side)
    case 'slider':
      return placeSlider(room, posture, step, { side, turn_rad: room.blockTurns[index] })
  }
}

function placeDyad(room: PlanRoom, posture: Float64Array, { first, second }: DyadStep, side: number): number {
  const ax = xOf(room, posture, first.pivot)
  const ay = yOf(room, posture, first.pivot)
  const cx = xOf(room, posture, second.pivot)
  const cy = yOf(room, posture, second.pivot)
  const dx = cx - ax
  const dy = cy - ay
  const p = dx * dx + dy * dy
  const a = first.length_mm
  const b = second.length_mm
  const square = ((a + b) * (a + b) - p) * (p - (a - b) * (a - b))
  if (!(square >= 0)) return -1
  const root = Math.sqrt(square)
  const half = 0.5 / p
  const along = (p + a * a - b * b) * half
  const across = side * root * half
  const bx = along * dx - across * dy
  const by = along * dy + across * dx
  pointArm(room, posture, first, bx, by)
  putOn(room, posture, first.part, first.own, ax, ay)
  pointArm(room, posture, second, bx - dx, by - dy)
  putOn(room, posture, second.part, second.own, cx, cy)
  return root / (2 * a * b)
}

interface Line {
  /** A place on it, mm, and its direction, mount frame. */
  readonly x: number
  readonly y: number
  readonly along_rad: number
}

/** Turns an arm so that its end lies on a line, ahead of the foot of the pivot's perpendicular where `side` is 1. */
function armToLine(room: PlanRoom, posture: Float64Array, arm: Arm, line: Line, side: number): number {
  const ax = xOf(room, posture, arm.pivot)
  const ay = yOf(room, posture, arm.pivot)
  const ux = Math.cos(line.along_rad)
  const uy = Math.sin(line.along_rad)
  const off = ux * (line.y - ay) - uy * (line.x - ax)
  const square = (arm.length_mm - off) * (arm.length_mm + off)
  if (!(square >= 0)) return -1
  const run = side * Math.sqrt(square)
  pointArm(room, posture, arm, run * ux - off * uy, run * uy + off * ux)
  putOn(room, posture, arm.part, arm.own, ax, ay)
  return Math.abs(run) / arm.length_mm
}

function placePinInSlot(room: PlanRoom, posture: Float64Array, step: PinInSlotStep, side: number): number {
  const { slot, along_rad } = step
  const line = { x: xOf(room, posture, slot), y: yOf(room, posture, slot), along_rad: posture[3 * slot.part + 2] + along_rad }
  return armToLine(room, posture, step.arm, line, side)
}

function placeSlotOnPin(room: PlanRoom, posture: Float64Array, step: SlotOnPinStep, side: number): number {
  const ax = xOf(room, posture, step.pivot)
  const ay = yOf(room, posture, step.pivot)
  const dx = xOf(room, posture, step.target) - ax
  const dy = yOf(room, posture, step.target) - ay
  const distance = Math.sqrt(dx * dx + dy * dy)
  const square = (distance - step.offset_mm) * (distance + step.offset_mm)
  if (!(square >= 0)) return -1
  const run = side * Math.sqrt(square)
  turnTo(room, posture, step.part, Math.atan2(dy, dx) - Math.atan2(step.offset_mm, run) - step.along_rad)
  putOn(room, posture, step.part, step.own, ax, ay)
  // A pin close to the pivot fixes the turn badly whatever the angle.
  return Math.abs(run) / Math.max(distance, room.plan.mechanism.scale_mm)
}

interface BlockWay {
  readonly side: number
  /** Of the block against its guide. */
  readonly turn_rad: number
}

function placeSlider(room: PlanRoom, posture: Float64Array, step: SliderStep, way: BlockWay): number {
  const { block, guide, rod, joint, onBlock } = step
  turnTo(room, posture, block, posture[3 * guide + 2] + way.turn_rad)
  const along_rad = step.along_rad + posture[3 * (step.slotted === 'block' ? block : guide) + 2]
  // The joint runs on a line parallel to the slot.
  putOn(room, posture, block, onBlock, xOf(room, posture, onGuideOf(step)), yOf(room, posture, onGuideOf(step)))
  const on = { part: block, at: joint }
  const line = { x: xOf(room, posture, on), y: yOf(room, posture, on), along_rad }
  const sine = armToLine(room, posture, rod, line, way.side)
  if (sine < 0) return -1
  const c = room.cosines[rod.part]
  const s = room.sines[rod.part]
  const x = xOf(room, posture, rod.pivot) + c * rod.reach.x_mm - s * rod.reach.y_mm
  const y = yOf(room, posture, rod.pivot) + s * rod.reach.x_mm + c * rod.reach.y_mm
  putOn(room, posture, block, joint, x, y)
  return sine
}

function onGuideOf({ guide, onGuide }: SliderStep): PartPoint {
  return { part: guide, at: onGuide }
}
