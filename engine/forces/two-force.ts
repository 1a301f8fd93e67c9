/**
 * Friction in closed form where links carry nothing: parts are taken off one by one (two-force-plan.ts, held-part.ts).
 *
 * A bare link from P to Q, of length L along u, rubs on its pins with the levers e_P and e_Q. It carries one force f along
 * a line tangent to both friction circles, so the force on it at Q has the direction
 *
 *     w = q cos ε u + sin ε n        sin ε = (e_P + e_Q) / L        n: u turned by +90°        q: +1 tension, −1 compression
 *
 * and on the part that it holds at Q, with r from the part's pin to Q, the arm is a = b + q h, h = −cos ε (r × u),
 * b = e_Q − sin ε (r · u). For both senses to be free of a jam on the part's pin, and on opposite sides of it, it takes
 *
 *     |h| > |b| + |e|
 *
 * and then just one of the two is consistent, the one whose arm turns against what the load asks for: see `senseOf`. Where
 * it does not hold, both or none may be consistent and the general way has to decide.
 */
import type { Mechanism } from '../motion/mechanism.ts'
import { limits } from '../numbers/limits.ts'
import type { ForceFrame } from './force-frame.ts'
import { type HeldEquation, solveHeld } from './held-part.ts'
import type { BareLink, Contact, HeldPart, TwoForcePlan } from './two-force-plan.ts'
import type { TwoForceRoom } from './two-force-room.ts'

/** Where the answer goes: |R| of each joint, and R on its b, two components a joint. N. */
export interface JointForces {
  readonly values: Float64Array
  readonly forces: Float64Array
}

interface Taking {
  readonly room: TwoForceRoom
  readonly levers: Float64Array
  readonly out: JointForces
}
