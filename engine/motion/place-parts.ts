/**
 * A posture by its plan: every part placed in closed form from the turn of the leading part.
 *
 *                    ● B                     with d = C − A, p = |d|², arms a and b:
 *             a   ╱     ╲  b                 B = A + d (p + a² − b²) / 2p ± d⊥ √(((a+b)² − p)(p − (a−b)²)) / 2p
 *          A ●───────────────● C             The root and the division do not wait for each other.
 *
 * Which of the two meeting points is meant is read off the near posture, step by step, and never changed here. Where the
 * arms stand in line the two points run into one and the root loses half of its digits: `conditioning` is the sine of the
 * angle between the arms (or between an arm and the normal of its slot), the least of all steps and of both postures.
 */
import type { PartPoint, Point } from '../design/design.ts'
import type { Plan } from './plan.ts'
import { blockTurnOf, sideOf } from './plan-side.ts'
import type { Arm, DyadStep, PinInSlotStep, PlanStep, SliderStep, SlotOnPinStep } from './plan-step.ts'

/** Room for the postures of one plan; one a caller, never shared between two that run at once. */
export interface PlanRoom {
  readonly plan: Plan
  /** Cosine and sine of each part's turn. */
  readonly cosines: Float64Array
  readonly sines: Float64Array
  /** Of each step, as read off the near posture. */
  readonly sides: Float64Array
  readonly blockTurns: Float64Array
  /** Least sine met by the last placing, 0 to 1; 0 where a step could not close. */
  conditioning: number
  /** Step that could not close, or −1. */
  failedStep: number
}

/** Room for a plan's postures; the mount stands in it already. */
export function makePlanRoom(plan: Plan): PlanRoom {
  const { parts_count } = plan.mechanism
  const turns = { cosines: new Float64Array(parts_count), sines: new Float64Array(parts_count) }
  turns.cosines[0] = 1
  const steps_count = plan.steps.length
  const read = { sides: new Float64Array(steps_count), blockTurns: new Float64Array(steps_count) }
  return { plan, ...turns, ...read, conditioning: 1, failedStep: -1 }
}

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

/** Sine of the step's angle, or −1 where it cannot close. */
function placeStep(room: PlanRoom, posture: Float64Array, index: number): number {
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

/** Turns a part, by whole turns nearest to the turn that stands in the posture. */
function turnTo(room: PlanRoom, posture: Float64Array, part: number, angle: number): void {
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
function pointArm(room: PlanRoom, posture: Float64Array, arm: Arm, x: number, y: number): void {
  const { part, reach, length_mm } = arm
  const inverse = 1 / (length_mm * length_mm)
  setTurn(posture, part, Math.atan2(y, x) - arm.bearing_rad)
  room.cosines[part] = (x * reach.x_mm + y * reach.y_mm) * inverse
  room.sines[part] = (y * reach.x_mm - x * reach.y_mm) * inverse
}

function putOn(room: PlanRoom, posture: Float64Array, part: number, own: Point, x: number, y: number): void {
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
