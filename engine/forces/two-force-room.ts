/** Memory for taking parts off one by one, and the plans found so far. Part of a mechanism's `ForceRoom`. */
import type { Mechanism } from '../motion/mechanism.ts'
import { emptyHeldEquation, type HeldEquation } from './held-part.ts'
import { type Acting, planTwoForce, type TwoForcePlan } from './two-force-plan.ts'

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
  readonly acting: Acting
  /** One for each set of parts that was loaded together: a few a design. */
  readonly plans: { readonly acting: Acting; readonly plan: TwoForcePlan | undefined }[]
  /** The frame that `arms` are of. */
  armsTicket: number
}

/** Room for one mechanism. */
export function makeTwoForceRoom(mechanism: Mechanism): TwoForceRoom {
  const { columns_count, parts_count, joints } = mechanism
  return {
    mechanism,
    load: new Float64Array(columns_count),
    port: new Float64Array(columns_count),
    wrench: new Float64Array(columns_count),
    arms: new Float64Array(4 * joints.length),
    equation: emptyHeldEquation(),
    acting: { load: new Uint8Array(parts_count), port: new Uint8Array(parts_count) },
    plans: [],
    armsTicket: 0,
  }
}

/** Takes a question in. @returns the plan for where its load and port act, or undefined when only the general way serves */
export function planFor(room: TwoForceRoom, load: Float64Array, port: Float64Array): TwoForcePlan | undefined {
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
