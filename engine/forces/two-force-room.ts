/** Memory for taking parts off one by one, and the plans found so far. Part of a mechanism's `ForceRoom`. */

import type { Point } from '../design/design.ts'
import type { Mechanism } from '../motion/mechanism.ts'
import type { ArrayStock } from '../numbers/array-stock.ts'
import { emptyHeldEquation, type HeldEquation } from './held-part.ts'
import { type Acting, planTwoForce, type TwoForcePlan } from './two-force-plan.ts'

/** A link's line of force: unit force on the link in tension is `along` + `across`, in compression −`along` + `across`. */
export interface ForceLine {
  along_x: number
  along_y: number
  across_x: number
  across_y: number
}

export interface TwoForceRoom {
  readonly mechanism: Mechanism
  /** Generalised forces of the present question. */
  readonly load: Float64Array
  readonly port: Float64Array
  /** Load and what has been found so far, on each part. */
  readonly wrench: Float64Array
  /** From each part's origin to its hole, four numbers a joint: x, y on a, then on b. mm, mount frame. */
  readonly arms: Float64Array
  readonly equation: HeldEquation
  readonly line: ForceLine
  readonly acting: Acting
  /** One for each set of parts that was loaded together: a few a design. */
  readonly plans: { readonly acting: Acting; readonly plan: TwoForcePlan | undefined }[]
  /** The frame that `arms` are of. */
  armsTicket: number
}

/** Room for one mechanism. */
export function makeTwoForceRoom(mechanism: Mechanism, numbers: ArrayStock): TwoForceRoom {
  const { columns_count, parts_count, joints } = mechanism
  return {
    mechanism,
    load: numbers(columns_count),
    port: numbers(columns_count),
    wrench: numbers(columns_count),
    arms: numbers(4 * joints.length),
    equation: emptyHeldEquation(),
    line: { along_x: 0, along_y: 0, across_x: 0, across_y: 0 },
    acting: { load: new Uint8Array(parts_count), port: new Uint8Array(parts_count) },
    plans: [],
    armsTicket: 0,
  }
}

/** Takes a question in. @returns the plan for where its load and port act, or undefined when only the general way serves */
export function planFor(
  room: TwoForceRoom,
  { load, port }: { readonly load: Float64Array; readonly port: Float64Array },
): TwoForcePlan | undefined {
  room.load.set(load)
  room.port.set(port)
  const { acting, plans } = room
  markParts(load, acting.load)
  markParts(port, acting.port)
  for (const known of plans) {
    if (alike(known.acting.load, acting.load) && alike(known.acting.port, acting.port)) return known.plan
  }
  const kept = { load: acting.load.slice(), port: acting.port.slice() }
  const plan = planTwoForce(room.mechanism, kept)
  plans.push({ acting: kept, plan })
  return plan
}

/** Arms of all holes at a frame's posture, unless they stand there already. */
export function fillArms(room: TwoForceRoom, frame: { readonly posture: Float64Array; readonly ticket: number }): void {
  if (room.armsTicket === frame.ticket) return
  const { joints } = room.mechanism
  for (let index = 0; index < joints.length; index++) {
    const { a, b, atA, atB } = joints[index]
    fillArm(room.arms, { at: 4 * index, turn_rad: frame.posture[3 * a + 2], hole: atA })
    fillArm(room.arms, { at: 4 * index + 2, turn_rad: frame.posture[3 * b + 2], hole: atB })
  }
  room.armsTicket = frame.ticket
}

function fillArm(arms: Float64Array, { at, turn_rad, hole }: { at: number; turn_rad: number; hole: Point }): void {
  const c = Math.cos(turn_rad)
  const s = Math.sin(turn_rad)
  arms[at] = c * hole.x_mm - s * hole.y_mm
  arms[at + 1] = s * hole.x_mm + c * hole.y_mm
}

function markParts(generalised: Float64Array, out: Uint8Array): void {
  for (let part = 1; part < out.length; part++) {
    const column = 3 * (part - 1)
    out[part] = generalised[column] !== 0 || generalised[column + 1] !== 0 || generalised[column + 2] !== 0 ? 1 : 0
  }
}

function alike(one: Uint8Array, other: Uint8Array): boolean {
  for (let part = 1; part < one.length; part++) if (one[part] !== other[part]) return false
  return true
}
