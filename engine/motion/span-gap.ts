/** Where a mechanism cannot close: two pins that the parts between them do not span, and by how much. */
import type { Design } from '../design/design.ts'
import type { Mechanism } from './mechanism.ts'
import { makePlan } from './plan.ts'
import { type PlanGap, planPosture } from './plan-posture.ts'

/**
 * @param near a posture, closed or not, that says on which side the parts lie
 * @param driveValue flexion of the driven part, rad
 * @returns undefined where the drive is no turn on the mount, or where the parts reach after all
 */
export function spanGap(mechanism: Mechanism, near: Float64Array, driveValue: number): PlanGap | undefined {
  const { drive } = mechanism.design
  if (drive.kind !== 'turn' || drive.against !== 0) return undefined
  const plan = makePlan(mechanism)
  if (plan.lead?.part !== drive.part) return undefined
  const posture = planPosture(plan, near, driveValue)
  return posture instanceof Float64Array || posture.kind === 'unsettled' ? undefined : posture
}

/** How far apart two pins are, what the parts between them reach, and by how much that is too little or too much; mm in the text. */
export function gapWords({ pins }: Design, { pins: [one, other], distance_mm, least_mm, most_mm }: PlanGap): string {
  const apart = `pins ${pins[one].id} and ${pins[other].id} are ${distance_mm.toFixed(2)} mm apart`
  return distance_mm > most_mm
    ? `${apart}, but the parts between them reach at most ${most_mm.toFixed(2)} mm: ${missing(distance_mm - most_mm)} mm too far`
    : `${apart}, but the parts between them need at least ${least_mm.toFixed(2)} mm: ${missing(least_mm - distance_mm)} mm too near`
}

/** The least change of a link that mends a gap, mm in the text. */
export function gapMend({ distance_mm, least_mm, most_mm }: PlanGap): string {
  return `change a link by at least ${missing(distance_mm > most_mm ? distance_mm - most_mm : least_mm - distance_mm)} mm`
}

/** Rounded up: a link changed by what is said must reach. */
function missing(amount_mm: number): string {
  return (Math.ceil(amount_mm * 100) / 100).toFixed(2)
}
