/**
 * Transmission angle of a two-pin link: between the link and the arm that it moves, at the pin where they meet.
 *
 *          link
 *      ●─────────● end       90°: the whole force of the link turns the arm
 *               ╱ μ          0°: the link only pulls at the arm's own pivot; the arm is locked or free
 *         arm  ╱
 *             ● pivot of the moved part
 *
 * It is folded to 0..90°, since a link acts along one line whichever way it pushes.
 */
import type { Point } from '../design/design.ts'
import { type Mechanism, placed } from './mechanism.ts'
import { pinSitesOf } from './pin-site.ts'
import type { Plan } from './plan.ts'
import type { Arm, PlanStep } from './plan-step.ts'

export interface Transmission {
  /** The two-pin link. */
  readonly link: number
  /** The part that it moves. */
  readonly moved: number
  /** Pin where they meet. */
  readonly pin: number
  /** Pin at the link's other end. */
  readonly near: number
  /** Pin on which the moved part turns. */
  readonly pivot: number
}

/**
 * Every two-pin link of a dyad with the part that it moves. Where both parts of the dyad have two pins only, the link is the
 * one with the role `link`, or else the one that is not pinned to the mount. Slots, and parts that no dyad places, have no
 * such pair and are left out.
 */
export function transmissionsOf(plan: Plan): Transmission[] {
  return plan.steps.flatMap((step) => transmissionOf(plan.mechanism, step))
}

function transmissionOf(mechanism: Mechanism, step: PlanStep): Transmission[] {
  if (step.kind !== 'dyad') return []
  const { first, second, pins } = step
  const meeting = pinSitesOf(mechanism).find(
    ({ rounds }) => rounds.some(({ part }) => part === first.part) && rounds.some(({ part }) => part === second.part),
  )
  const rank = (arm: Arm): number => linkRank(mechanism, arm)
  if (!meeting || Math.max(rank(first), rank(second)) < 0) return []
  const [link, arm, near, pivot] =
    rank(first) >= rank(second) ? [first, second, pins[0], pins[1]] : [second, first, pins[1], pins[0]]
  return [{ link: link.part, moved: arm.part, pin: meeting.pin, near, pivot }]
}

/** How much a part is a link rather than an arm; negative with more than two pins. */
function linkRank({ design }: Mechanism, { part, pivot }: Arm): number {
  const pins = design.pins.filter((pin) => pin.joins.some((join) => join.part === part))
  if (pins.length !== 2) return -1
  return (design.parts[part].role === 'link' ? 2 : 0) + (pivot.part === 0 ? 0 : 1)
}

/** @returns rad, 0 to π/2, at a closed posture */
export function transmissionAngle(mechanism: Mechanism, posture: Float64Array, transmission: Transmission): number {
  const { link, near, pin, moved, pivot } = transmission
  const end = onPart(mechanism, posture, { part: link, pin })
  const start = onPart(mechanism, posture, { part: link, pin: near })
  const held = onPart(mechanism, posture, { part: moved, pin: pivot })
  const ux = start.x_mm - end.x_mm
  const uy = start.y_mm - end.y_mm
  const wx = held.x_mm - end.x_mm
  const wy = held.y_mm - end.y_mm
  return Math.atan2(Math.abs(ux * wy - uy * wx), Math.abs(ux * wx + uy * wy))
}

/** A pin's centre as a part's own hole has it; a part has but one hole on a pin. */
function onPart({ design }: Mechanism, posture: Float64Array, on: { readonly part: number; readonly pin: number }): Point {
  const { joins } = design.pins[on.pin]
  const ref = joins.find(({ part }) => part === on.part) ?? joins[0]
  return placed(posture, ref.part, design.parts[ref.part].holes[ref.hole].at)
}
