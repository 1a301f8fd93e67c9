/**
 * A posture by its plan for a value of the drive, or what stands in its way.
 *
 * The value is the flexion of the plan's leading part against the mount (clockwise, rad): for a finger that is driven by a
 * turn against the mount it is the drive's coordinate itself.
 */
import type { PartPoint } from '../design/design.ts'
import { type Mechanism, placed } from './mechanism.ts'
import { placeParts } from './place-parts.ts'
import type { Plan } from './plan.ts'
import { makePlanRoom } from './plan-room.ts'
import type { PlanStep } from './plan-step.ts'
import { makeBench, settle } from './settle.ts'

/** Two pins (or a pin and a slot) that the parts between them cannot span. */
export interface PlanGap {
  /** `links`: from pin to pin. `slot`: from the first pin to the line of the slot that the second runs in. */
  readonly kind: 'links' | 'slot'
  /** Pin indices. */
  readonly pins: readonly [number, number]
  /** Parts that should span the distance. */
  readonly parts: readonly number[]
  readonly distance_mm: number
  readonly least_mm: number
  readonly most_mm: number
}

/** Neither a posture nor a gap of two pins: parts that are left over did not settle from the near posture. */
export interface PlanUnsettled {
  readonly kind: 'unsettled'
  readonly parts: readonly number[]
}

/**
 * @param near a posture of the same assembly, which says on which side each step lies; not changed
 * @param driveValue flexion of the plan's lead against the mount, rad
 * @returns the posture, or the gap that keeps it from closing
 */
export function planPosture(plan: Plan, near: Float64Array, driveValue: number): Float64Array | PlanGap | PlanUnsettled {
  const room = makePlanRoom(plan)
  const posture = Float64Array.from(near)
  const { mechanism, lead, leftover } = plan
  if (!lead) return { kind: 'unsettled', parts: leftover }
  if (!placeParts(room, posture, -driveValue)) {
    return room.failedStep < 0 ? { kind: 'unsettled', parts: leftover } : gapOf(plan.steps[room.failedStep], posture)
  }
  if (leftover.length === 0) return posture
  return settleLeftover(mechanism, posture, lead.part) ?? { kind: 'unsettled', parts: leftover }
}

function settleLeftover(mechanism: Mechanism, start: Float64Array, lead: number): Float64Array | undefined {
  const turn = start[3 * lead + 2]
  const held = {
    value: (posture: Float64Array) => mechanism.scale_mm * (posture[3 * lead + 2] - turn),
    addDerivative: (row: { out: Float64Array; start: number }) => {
      row.out[row.start + 3 * (lead - 1) + 2] += 1
    },
  }
  return settle(makeBench(mechanism), start, held)?.posture
}

/** @param posture with every part placed that comes before the step */
function gapOf(step: PlanStep, posture: Float64Array): PlanGap {
  const { pins } = step
  switch (step.kind) {
    case 'dyad': {
      const { first, second } = step
      const distance_mm = spanBetween(posture, first.pivot, second.pivot)
      const reach = { least_mm: Math.abs(first.length_mm - second.length_mm), most_mm: first.length_mm + second.length_mm }
      return { kind: 'links', pins, parts: [first.part, second.part], distance_mm, ...reach }
    }
    case 'pin in slot': {
      const along_rad = posture[3 * step.slot.part + 2] + step.along_rad
      const distance_mm = distanceToLine(posture, step.arm.pivot, { through: step.slot, along_rad })
      return { kind: 'slot', pins, parts: [step.arm.part], distance_mm, least_mm: 0, most_mm: step.arm.length_mm }
    }
    case 'slot on pin': {
      const distance_mm = spanBetween(posture, step.pivot, step.target)
      const least_mm = Math.abs(step.offset_mm)
      return { kind: 'links', pins, parts: [step.part], distance_mm, least_mm, most_mm: Number.POSITIVE_INFINITY }
    }
    case 'slider': {
      const along_rad = posture[3 * (step.slotted === 'block' ? step.block : step.guide) + 2] + step.along_rad
      const through = { part: step.block, at: step.joint }
      const distance_mm = distanceToLine(posture, step.rod.pivot, { through, along_rad })
      return { kind: 'slot', pins, parts: [step.rod.part], distance_mm, least_mm: 0, most_mm: step.rod.length_mm }
    }
  }
}

function spanBetween(posture: Float64Array, from: PartPoint, to: PartPoint): number {
  const a = placed(posture, from.part, from.at)
  const b = placed(posture, to.part, to.at)
  return Math.hypot(b.x_mm - a.x_mm, b.y_mm - a.y_mm)
}

function distanceToLine(posture: Float64Array, from: PartPoint, line: { through: PartPoint; along_rad: number }): number {
  const a = placed(posture, from.part, from.at)
  const b = placed(posture, line.through.part, line.through.at)
  return Math.abs(Math.cos(line.along_rad) * (b.y_mm - a.y_mm) - Math.sin(line.along_rad) * (b.x_mm - a.x_mm))
}
