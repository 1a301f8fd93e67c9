import type { Plan } from './plan.ts'

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
