/**
 * Rates of all parts for a unit turn of the leading part, step by step along the plan.
 *
 * Each step is one linear equation a part. Dyad: v_A + ω_a × AB = v_C + ω_b × CB. A place held to a line keeps up with the
 * line only across it: n · (v_A + ω × AD) = n · v_D, and n · (ω × AD) = ω u · AD with u along the line.
 */
import type { PartPoint, Point } from '../design/design.ts'
import { xOf, yOf } from './part-places.ts'
import type { PlanRoom } from './plan-room.ts'
import type { Arm, DyadStep, PlanStep, SliderStep, SlotOnPinStep } from './plan-step.ts'

/**
 * @param room as `placeParts` left it for this posture
 * @param rates out: three a part as in a posture, mm and rad per rad of the leading part
 */
export function ratesOf(room: PlanRoom, posture: Float64Array, rates: Float64Array): void {
  const { lead, steps } = room.plan
  if (!lead) return
  rates[0] = rates[1] = rates[2] = 0
  rates[3 * lead.part + 2] = 1
  moveWith(room, rates, lead, 0, 0)
  for (let index = 0; index < steps.length; index++) stepRates(room, posture, rates, steps[index])
}

function stepRates(room: PlanRoom, posture: Float64Array, rates: Float64Array, step: PlanStep): void {
  if (step.kind === 'dyad') dyadRates(room, rates, step)
  else if (step.kind === 'slider') sliderRates(room, posture, rates, step)
  else if (step.kind === 'slot on pin') slotOnPinRates(room, posture, rates, step)
  else {
    const line = { along_rad: posture[3 * step.slot.part + 2] + step.along_rad, part: step.slot.part }
    armOnLine(room, posture, rates, step.arm, line)
  }
}

function slotOnPinRates(room: PlanRoom, posture: Float64Array, rates: Float64Array, step: SlotOnPinStep): void {
  const pivotX = xRateOf(room, rates, step.pivot)
  const pivotY = yRateOf(room, rates, step.pivot)
  const apartX = xRateOf(room, rates, step.target) - pivotX
  const apartY = yRateOf(room, rates, step.target) - pivotY
  const along_rad = posture[3 * step.part + 2] + step.along_rad
  const dx = xOf(room, posture, step.target) - xOf(room, posture, step.pivot)
  const dy = yOf(room, posture, step.target) - yOf(room, posture, step.pivot)
  rates[3 * step.part + 2] = acrossLine(along_rad, apartX, apartY) / alongLine(along_rad, dx, dy)
  moveWith(room, rates, step, pivotX, pivotY)
}

/** Velocity along x of a point of a part, mm per rad of the lead. */
function xRateOf(room: PlanRoom, rates: Float64Array, { part, at }: PartPoint): number {
  return rates[3 * part] - rates[3 * part + 2] * (room.sines[part] * at.x_mm + room.cosines[part] * at.y_mm)
}

/** Velocity along y of a point of a part, mm per rad of the lead. */
function yRateOf(room: PlanRoom, rates: Float64Array, { part, at }: PartPoint): number {
  return rates[3 * part + 1] + rates[3 * part + 2] * (room.cosines[part] * at.x_mm - room.sines[part] * at.y_mm)
}

interface OnPivot {
  readonly part: number
  readonly own: Point
}

/** Lets a part whose turn's rate is set already move so that its own pivot has the velocity (x, y). */
function moveWith(room: PlanRoom, rates: Float64Array, { part, own }: OnPivot, x: number, y: number): void {
  const c = room.cosines[part]
  const s = room.sines[part]
  const turn = rates[3 * part + 2]
  rates[3 * part] = x + turn * (s * own.x_mm + c * own.y_mm)
  rates[3 * part + 1] = y - turn * (c * own.x_mm - s * own.y_mm)
}

function alongLine(along_rad: number, x: number, y: number): number {
  return Math.cos(along_rad) * x + Math.sin(along_rad) * y
}

function acrossLine(along_rad: number, x: number, y: number): number {
  return Math.cos(along_rad) * y - Math.sin(along_rad) * x
}

/** x in the mount frame from an arm's pivot to its end, mm. */
function xReach(room: PlanRoom, { part, reach }: Arm): number {
  return room.cosines[part] * reach.x_mm - room.sines[part] * reach.y_mm
}

function yReach(room: PlanRoom, { part, reach }: Arm): number {
  return room.sines[part] * reach.x_mm + room.cosines[part] * reach.y_mm
}

function dyadRates(room: PlanRoom, rates: Float64Array, { first, second }: DyadStep): void {
  const ax = xReach(room, first)
  const ay = yReach(room, first)
  const bx = xReach(room, second)
  const by = yReach(room, second)
  const fromX = xRateOf(room, rates, first.pivot)
  const fromY = yRateOf(room, rates, first.pivot)
  const toX = xRateOf(room, rates, second.pivot)
  const toY = yRateOf(room, rates, second.pivot)
  const inverse = 1 / (ax * by - ay * bx)
  rates[3 * first.part + 2] = (bx * (toX - fromX) + by * (toY - fromY)) * inverse
  rates[3 * second.part + 2] = (ax * (toX - fromX) + ay * (toY - fromY)) * inverse
  moveWith(room, rates, first, fromX, fromY)
  moveWith(room, rates, second, toX, toY)
}

interface MovingLine {
  readonly along_rad: number
  /** Part that the line moves with. */
  readonly part: number
}

/** An arm whose end is held to a line. */
function armOnLine(room: PlanRoom, posture: Float64Array, rates: Float64Array, arm: Arm, line: MovingLine): void {
  const { along_rad, part } = line
  const pivotX = xRateOf(room, rates, arm.pivot)
  const pivotY = yRateOf(room, rates, arm.pivot)
  const reachX = xReach(room, arm)
  const reachY = yReach(room, arm)
  // The velocity that the arm's end would have if it were fixed to the line's part.
  const turn = rates[3 * part + 2]
  const endX = rates[3 * part] - turn * (yOf(room, posture, arm.pivot) + reachY - posture[3 * part + 1])
  const endY = rates[3 * part + 1] + turn * (xOf(room, posture, arm.pivot) + reachX - posture[3 * part])
  const across = acrossLine(along_rad, endX - pivotX, endY - pivotY)
  rates[3 * arm.part + 2] = across / alongLine(along_rad, reachX, reachY)
  moveWith(room, rates, arm, pivotX, pivotY)
}

function sliderRates(room: PlanRoom, posture: Float64Array, rates: Float64Array, step: SliderStep): void {
  const { block, guide, rod, joint } = step
  const along_rad = step.along_rad + posture[3 * (step.slotted === 'block' ? block : guide) + 2]
  armOnLine(room, posture, rates, rod, { along_rad, part: guide })
  const turn = rates[3 * rod.part + 2]
  const endX = xRateOf(room, rates, rod.pivot) - turn * yReach(room, rod)
  const endY = yRateOf(room, rates, rod.pivot) + turn * xReach(room, rod)
  rates[3 * block + 2] = rates[3 * guide + 2]
  moveWith(room, rates, { part: block, own: joint }, endX, endY)
}
