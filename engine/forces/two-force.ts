/**
 * Friction in closed form where links carry nothing: parts are taken off one by one (two-force-plan.ts, held-part.ts).
 *
 * A bare link from P (far) to Q (near), of length L along u, rubs on its pins with the levers e_P and e_Q. It carries one force
 * λ along a line tangent to both friction circles: the force on it at Q has the direction
 *
 *     w = q cos ε u + sin ε n        sin ε = (e_P + e_Q) / L        n: u turned by +90°        q: +1 tension, −1 compression
 *
 * and with r from the pin of the part that it holds to Q, the arm of what it gives to that part is
 *
 *     g = b + q h        h = −cos ε (r × u)        b = e_Q − sin ε (r · u)
 *
 * If |h| > |b| + |e|, e the lever of the part's pin, the two senses lie on opposite sides of the pin and outside of its friction
 * circle. Then just one is consistent (λ > 0): the known loads ask for M − e |G|, and the arm has to turn the other way. Nearer
 * to the pin both or none may be consistent and the general way decides.
 *
 * With less friction every one of these conditions holds all the more, so an answer is the only one there is, and the one that
 * friction raised from nothing leads to. Derived in docs/theory/two-force-links.md.
 */
import { limits } from '../numbers/limits.ts'
import type { Vector } from '../numbers/vector.ts'
import type { Contact } from './contact.ts'
import type { ForceFrame } from './force-frame.ts'
import { solveHeld } from './held-part.ts'
import type { BareLink, HeldPart, TwoForcePlan } from './two-force-plan.ts'
import { fillArms, type TwoForceRoom } from './two-force-room.ts'

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

/**
 * Solves the question that `room` was given last, for signed levers κ; the answer stands in `out`.
 *
 * @returns false where a force passes a pin too close for the answer to be the only one: the general way then decides
 */
export function solveTwoForce(frame: ForceFrame, plan: TwoForcePlan, given: Omit<Taking, 'room'>): boolean {
  const room = frame.room.twoForce
  fillArms(room, frame)
  room.wrench.set(room.load)
  const taking = { room, ...given }
  for (const held of plan.held) {
    fillKnown(taking, held)
    if (!(held.by === 'port' ? takePort(taking, held) : takeLink(taking, held.pin, held.by))) return false
    const { known_x, known_y } = room.equation
    record(taking, held.pin, { x: -known_x, y: -known_y })
    passOn(taking, held.pin)
  }
  return true
}

/** What is known on a part, its moment taken about the pin. */
function fillKnown({ room, levers }: Taking, { part, pin }: HeldPart): void {
  const { equation, wrench, arms, mechanism } = room
  const column = 3 * (part - 1)
  const arm = armOf(pin)
  const x = wrench[column]
  const y = wrench[column + 1]
  equation.lever = pin.side * levers[pin.joint]
  equation.known_x = x
  equation.known_y = y
  equation.known_moment = wrench[column + 2] * mechanism.scale_mm - arms[arm] * y + arms[arm + 1] * x
}

/** Finds the port's amplitude from a part that it acts on; the port then counts as known everywhere. */
function takePort({ room }: Taking, { part, pin }: HeldPart): boolean {
  const { equation, port, wrench, arms, mechanism } = room
  const column = 3 * (part - 1)
  const arm = armOf(pin)
  equation.x = port[column]
  equation.y = port[column + 1]
  equation.arm = port[column + 2] * mechanism.scale_mm - arms[arm] * equation.y + arms[arm + 1] * equation.x
  const amplitude = solveHeld(equation)
  if (!Number.isFinite(amplitude)) return false
  for (let index = 0; index < wrench.length; index++) wrench[index] += amplitude * port[index]
  equation.known_x += amplitude * equation.x
  equation.known_y += amplitude * equation.y
  return true
}

/** Finds a link's force from the part that it holds, and puts it on the part at its far end. */
function takeLink(taking: Taking, pin: Contact, link: BareLink): boolean {
  const { room, levers } = taking
  const { arms, equation, line } = room
  if (!fillLine(taking, link)) return false
  const { near, far } = link
  const held = armBeyond(near)
  const hinge = armOf(pin)
  const r_x = arms[held] - arms[hinge]
  const r_y = arms[held + 1] - arms[hinge + 1]
  const swing = r_y * line.along_x - r_x * line.along_y
  const base = near.side * levers[near.joint] + r_y * line.across_x - r_x * line.across_y
  if (!(Math.abs(swing) > Math.abs(base) + Math.abs(equation.lever))) return false
  const asked = equation.known_moment - equation.lever * sizeOf(equation.known_x, equation.known_y)
  const sense = asked > 0 === swing > 0 ? -1 : 1
  equation.arm = base + sense * swing
  equation.x = -sense * line.along_x - line.across_x
  equation.y = -sense * line.along_y - line.across_y
  const force = solveHeld(equation)
  if (!(Math.abs(force) < Number.POSITIVE_INFINITY)) return false
  const given = { x: force * equation.x, y: force * equation.y }
  record(taking, far, given)
  record(taking, near, { x: -given.x, y: -given.y })
  passOn(taking, far)
  equation.known_x += given.x
  equation.known_y += given.y
  return true
}

/** The line of force as cos ε u and sin ε n; false where the friction circles reach past the link's length. */
function fillLine({ room, levers }: Taking, { near, far }: BareLink): boolean {
  const { arms, line } = room
  const onNear = armOf(near)
  const onFar = armOf(far)
  const x = arms[onNear] - arms[onFar]
  const y = arms[onNear + 1] - arms[onFar + 1]
  const length = sizeOf(x, y)
  const sine = (near.side * levers[near.joint] + far.side * levers[far.joint]) / length
  if (!(Math.abs(sine) < limits.steepestLine)) return false
  const cosine = Math.sqrt(1 - sine * sine)
  line.along_x = (cosine * x) / length
  line.along_y = (cosine * y) / length
  line.across_x = (-sine * y) / length
  line.across_y = (sine * x) / length
  return true
}

function sizeOf(x: number, y: number): number {
  return Math.sqrt(x * x + y * y)
}

/** Where the arm of a contact stands in `arms`. */
function armOf({ joint, side }: Contact): number {
  return 4 * joint + (side > 0 ? 2 : 0)
}

/** Where the arm of the same joint on the part beyond stands. */
function armBeyond({ joint, side }: Contact): number {
  return 4 * joint + (side > 0 ? 0 : 2)
}

/** Keeps the force on the contact's part as the joint's. */
function record({ out }: Taking, { joint, side }: Contact, force: Vector): void {
  out.forces[2 * joint] = side * force.x
  out.forces[2 * joint + 1] = side * force.y
  out.values[joint] = sizeOf(force.x, force.y)
}

/** Puts a joint's force and friction on the part beyond, where they count as known from now on. */
function passOn({ room, levers, out }: Taking, contact: Contact): void {
  if (contact.beyond === 0) return
  const { wrench, arms, mechanism } = room
  const { joint, side } = contact
  const column = 3 * (contact.beyond - 1)
  const arm = armBeyond(contact)
  const x = -side * out.forces[2 * joint]
  const y = -side * out.forces[2 * joint + 1]
  const couple = side * levers[joint] * out.values[joint]
  wrench[column] += x
  wrench[column + 1] += y
  wrench[column + 2] += (arms[arm] * y - arms[arm + 1] * x + couple) / mechanism.scale_mm
}
