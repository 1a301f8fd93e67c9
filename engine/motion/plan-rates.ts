/**
 * Rates of all parts for a unit turn of the leading part, step by step along the plan.
 *
 * Each step is one linear equation a part. Dyad: v_A + ω_a × AB = v_C + ω_b × CB. A place held to a line keeps up with the
 * line only across it: n · (v_A + ω × AD) = n · v_D, and n · (ω × AD) = ω u · AD with u along the line.
 */
import type { PartPoint, Point } from '../design/design.ts'
import { type PlanRoom, xOf, yOf } from './place-parts.ts'
import type { Arm, DyadStep, PlanStep, SliderStep, SlotOnPinStep } from './plan-step.ts'

/**
 * @param room as `placeParts` left it for this posture
 * @param rates out: three a part as in a posture, mm and rad per rad of the leading part
 */
export function ratesOf(room: PlanRoom, posture: Float64Array, rates: Float64Array): void {
  const { lead, steps } = room.plan
  if (!lead) return
  rates[0] = rates[1] = rates[2] = 0
  spin(room, rates, { part: lead.part, own: lead.own, x: 0, y: 0 }, 1)
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
  const pivot = velocity(room, rates, step.pivot)
  const target = velocity(room, rates, step.target)
  const along_rad = posture[3 * step.part + 2] + step.along_rad
  const dx = xOf(room, posture, step.target) - xOf(room, posture, step.pivot)
  const dy = yOf(room, posture, step.target) - yOf(room, posture, step.pivot)
  const turn = acrossLine(along_rad, target.x - pivot.x, target.y - pivot.y) / alongLine(along_rad, dx, dy)
  spin(room, rates, { part: step.part, own: step.own, ...pivot }, turn)
}

interface Velocity {
  readonly x: number
  readonly y: number
}

/** Velocity of a point of a part, mm per rad of the lead. */
function velocity(room: PlanRoom, rates: Float64Array, { part, at }: PartPoint): Velocity {
  const turn = rates[3 * part + 2]
  const c = room.cosines[part]
  const s = room.sines[part]
  return {
    x: rates[3 * part] - turn * (s * at.x_mm + c * at.y_mm),
    y: rates[3 * part + 1] + turn * (c * at.x_mm - s * at.y_mm),
  }
}

/** Sets the rates of a part of which one point's velocity and the turn's rate are known. */
function spin(room: PlanRoom, rates: Float64Array, at: Velocity & { part: number; own: Point }, turn: number): void {
  const { part, own } = at
  const c = room.cosines[part]
  const s = room.sines[part]
  rates[3 * part] = at.x + turn * (s * own.x_mm + c * own.y_mm)
  rates[3 * part + 1] = at.y - turn * (c * own.x_mm - s * own.y_mm)
  rates[3 * part + 2] = turn
}

function alongLine(along_rad: number, x: number, y: number): number {
  return Math.cos(along_rad) * x + Math.sin(along_rad) * y
}

function acrossLine(along_rad: number, x: number, y: number): number {
  return Math.cos(along_rad) * y - Math.sin(along_rad) * x
}

/** Components in the mount frame of an arm from its pivot to its end. */
function armVector(room: PlanRoom, arm: Arm): Velocity {
  const x = arm.length_mm * Math.cos(arm.bearing_rad)
  const y = arm.length_mm * Math.sin(arm.bearing_rad)
  const c = room.cosines[arm.part]
  const s = room.sines[arm.part]
  return { x: c * x - s * y, y: s * x + c * y }
}

function dyadRates(room: PlanRoom, rates: Float64Array, { first, second }: DyadStep): void {
  const a = armVector(room, first)
  const b = armVector(room, second)
  const from = velocity(room, rates, first.pivot)
  const to = velocity(room, rates, second.pivot)
  const dx = to.x - from.x
  const dy = to.y - from.y
  const determinant = a.x * b.y - a.y * b.x
  spin(room, rates, { part: first.part, own: first.own, ...from }, (b.x * dx + b.y * dy) / determinant)
  spin(room, rates, { part: second.part, own: second.own, ...to }, (a.x * dx + a.y * dy) / determinant)
}

/** An arm whose end is held to a line that moves with a part. */
function armOnLine(
  room: PlanRoom,
  posture: Float64Array,
  rates: Float64Array,
  arm: Arm,
  line: { along_rad: number; part: number },
): void {
  const pivot = velocity(room, rates, arm.pivot)
  const reach = armVector(room, arm)
  const endX = xOf(room, posture, arm.pivot) + reach.x
  const endY = yOf(room, posture, arm.pivot) + reach.y
  const turn = rates[3 * line.part + 2]
  const dx = rates[3 * line.part] - turn * (endY - posture[3 * line.part + 1]) - pivot.x
  const dy = rates[3 * line.part + 1] + turn * (endX - posture[3 * line.part]) - pivot.y
  const rate = acrossLine(line.along_rad, dx, dy) / alongLine(line.along_rad, reach.x, reach.y)
  spin(room, rates, { part: arm.part, own: arm.own, ...pivot }, rate)
}

function sliderRates(room: PlanRoom, posture: Float64Array, rates: Float64Array, step: SliderStep): void {
  const { block, guide, rod, joint } = step
  const along_rad = step.along_rad + posture[3 * (step.slotted === 'block' ? block : guide) + 2]
  armOnLine(room, posture, rates, rod, { along_rad, part: guide })
  const pivot = velocity(room, rates, rod.pivot)
  const reach = armVector(room, rod)
  const turn = rates[3 * rod.part + 2]
  const end = { x: pivot.x - turn * reach.y, y: pivot.y + turn * reach.x }
  spin(room, rates, { part: block, own: joint, ...end }, rates[3 * guide + 2])
}
