/**
 * The joint forces that carry a generalised force, dyad by dyad in closed form: no matrix is factored.
 *
 *           Q              Moments of the first part about P and of the second about S, F the force at Q on the first:
 *       a ╱   ╲ b               a × F = A      b × F = −B       a = Q − P,  b = Q − S
 *     P ●       ● S             F = (A b + B a) / (a × b)
 *
 * The forces at P and S follow from each part's own balance and go over to the parts that stay. Moments are counted about the mount's
 * origin, so that a force passes from part to part as it is. The last part's couple is left to whatever drives it, as force-frame.ts
 * leaves it to the last row of its matrix; combinations that do no work have none, and for them both give the same forces. Where an
 * a × b is small the dyad is close to its dead centre and the matrix takes over.
 */
import type { Mechanism } from '../motion/mechanism.ts'
import type { PartTurns } from '../motion/part-turns.ts'
import type { ArrayStock } from '../numbers/array-stock.ts'
import { limits } from '../numbers/limits.ts'
import type { Contact } from './contact.ts'
import { type Dyad, type DyadOrder, dyadOrder } from './dyad-order.ts'

/** Room for the responses of one mechanism, at one posture at a time. */
export interface DyadRoom {
  readonly mechanism: Mechanism
  readonly order: DyadOrder
  /** Of each dyad of the order. */
  readonly places: readonly DyadPlaces[]
  /** Pin of each joint on a and hole on b, x, y each, mount frame, mm. With play in the pins they lie a little apart. */
  readonly centres: Float64Array
  /** Origin of each part, x, y in the mount frame, mm. */
  readonly origins: Float64Array
  /** Of each dyad |a| and |b| over |a × b|, 1/mm: how much of a couple on a part comes back as force at Q. */
  readonly couplings: Float64Array
  /** Forces (N) and moment about the mount's origin (N·mm) that each moving part has left to carry. */
  readonly carried: Float64Array
  /** With friction: where the forces act, laid out as `centres`, and what load and port ask of the joints there. */
  readonly touching: Float64Array
  readonly ofLoad: Float64Array
  readonly ofPort: Float64Array
}

/** @returns undefined for a mechanism that does not come apart into dyads */
export function dyadRoom(mechanism: Mechanism, numbers: ArrayStock): DyadRoom | undefined {
  const order = dyadOrder(mechanism)
  if (!order) return undefined
  const { joints, parts_count, columns_count } = mechanism
  return {
    mechanism,
    order,
    places: order.dyads.map(placesOf),
    centres: numbers(4 * joints.length),
    origins: numbers(2 * parts_count),
    couplings: numbers(2 * order.dyads.length),
    carried: numbers(columns_count),
    touching: numbers(4 * joints.length),
    ofLoad: numbers(2 * joints.length),
    ofPort: numbers(2 * joints.length),
  }
}

/** Takes in a posture with the turns of its parts. @returns false where a dyad stands too near to its dead centre for the closed form */
export function readDyads(room: DyadRoom, posture: Float64Array, partTurns: PartTurns): boolean {
  const { mechanism, order, centres, origins } = room
  for (let part = 0; part < mechanism.parts_count; part++) {
    origins[2 * part] = posture[3 * part]
    origins[2 * part + 1] = posture[3 * part + 1]
  }
  for (let joint = 0; joint < mechanism.joints.length; joint++) {
    const { a, b, atA, atB } = mechanism.joints[joint]
    const cos_a = partTurns[2 * a]
    const sin_a = partTurns[2 * a + 1]
    const cos_b = partTurns[2 * b]
    const sin_b = partTurns[2 * b + 1]
    centres[4 * joint] = posture[3 * a] + cos_a * atA.x_mm - sin_a * atA.y_mm
    centres[4 * joint + 1] = posture[3 * a + 1] + sin_a * atA.x_mm + cos_a * atA.y_mm
    centres[4 * joint + 2] = posture[3 * b] + cos_b * atB.x_mm - sin_b * atB.y_mm
    centres[4 * joint + 3] = posture[3 * b + 1] + sin_b * atB.x_mm + cos_b * atB.y_mm
  }
  for (let index = 0; index < order.dyads.length; index++) if (!readCouplings(room, index)) return false
  return true
}

function readCouplings({ order, centres, couplings }: DyadRoom, index: number): boolean {
  const { outerFirst, middle, outerSecond } = order.dyads[index]
  const [p, s, onFirst, onSecond] = [pointOf(outerFirst), pointOf(outerSecond), pointOf(middle), pointBeyond(middle)]
  const a_x = centres[onFirst] - centres[p]
  const a_y = centres[onFirst + 1] - centres[p + 1]
  const b_x = centres[onSecond] - centres[s]
  const b_y = centres[onSecond + 1] - centres[s + 1]
  const a = Math.sqrt(a_x * a_x + a_y * a_y)
  const b = Math.sqrt(b_x * b_x + b_y * b_y)
  const across = Math.abs(a_x * b_y - a_y * b_x)
  couplings[2 * index] = a / across
  couplings[2 * index + 1] = b / across
  return across >= limits.closedSine * a * b
}

/** Where the point of a contact on its own part stands. */
function pointOf({ joint, side }: Contact): number {
  return 4 * joint + (side > 0 ? 2 : 0)
}

/** Where the point of the same joint on the part beyond stands. */
function pointBeyond({ joint, side }: Contact): number {
  return 4 * joint + (side > 0 ? 0 : 2)
}

/** Joint forces for a generalised force at the posture that was read last; into `out`, two entries a joint, N. */
export function respondByDyads(room: DyadRoom, generalised: Float64Array, out: Float64Array): void {
  takeApart(room, room.centres, generalised, out)
}

/**
 * As `respondByDyads`, with the joints' forces acting at points of their own.
 *
 * @param points laid out as `centres`
 * @returns the moment about the last part's point that is left to what drives it, N·mm
 */
export function takeApart(room: DyadRoom, points: Float64Array, generalised: Float64Array, out: Float64Array): number {
  const { order, carried, places } = room
  putOnParts(room, generalised)
  for (let index = 0; index < places.length; index++) takeOff(carried, points, places[index], out)
  const { joint, part, side } = order.lead
  const column = 3 * (part - 1)
  const point = pointOf(order.lead)
  const x = carried[column]
  const y = carried[column + 1]
  out[2 * joint] = side * x
  out[2 * joint + 1] = side * y
  return carried[column + 2] - points[point] * y + points[point + 1] * x
}

/** A generalised force, its moments taken from the parts' origins to the mount's. */
function putOnParts({ mechanism, origins, carried }: DyadRoom, generalised: Float64Array): void {
  const { scale_mm } = mechanism
  for (let column = 0, origin = 2; column < carried.length; column += 3, origin += 2) {
    const x = generalised[column]
    const y = generalised[column + 1]
    carried[column] = x
    carried[column + 1] = y
    carried[column + 2] = generalised[column + 2] * scale_mm + origins[origin] * y - origins[origin + 1] * x
  }
}

/** Where what one dyad needs stands in the room's arrays: worked out once, since this is asked some ten thousand times an evaluation. */
interface DyadPlaces {
  /** Of P and S, and of Q on the first and on the second part, in arrays laid out as `centres`. */
  readonly p: number
  readonly s: number
  readonly onFirst: number
  readonly onSecond: number
  /** Of both parts in arrays laid out as `carried`. */
  readonly first: number
  readonly second: number
  /** Of the force at Q in arrays of joint forces, and its sense there. */
  readonly middle: number
  readonly side: number
  readonly outerFirst: PassedOn
  readonly outerSecond: PassedOn
}

/** Where a force on a contact goes. */
interface PassedOn {
  /** In arrays of joint forces, and its sense there. */
  readonly out: number
  readonly side: number
  /** The part beyond in arrays laid out as `carried`; negative for the mount. */
  readonly beyond: number
  /** The point of that part in arrays laid out as `centres`. */
  readonly at: number
}

function placesOf({ outerFirst, middle, outerSecond }: Dyad): DyadPlaces {
  return {
    p: pointOf(outerFirst),
    s: pointOf(outerSecond),
    onFirst: pointOf(middle),
    onSecond: pointBeyond(middle),
    first: 3 * (outerFirst.part - 1),
    second: 3 * (outerSecond.part - 1),
    middle: 2 * middle.joint,
    side: middle.side,
    outerFirst: passedOn(outerFirst),
    outerSecond: passedOn(outerSecond),
  }
}

function passedOn(contact: Contact): PassedOn {
  return { out: 2 * contact.joint, side: contact.side, beyond: 3 * (contact.beyond - 1), at: pointBeyond(contact) }
}

/** Forces of one dyad, as at the head of this file; they go into `out`, and what stays is left on the parts beyond. */
function takeOff(carried: Float64Array, points: Float64Array, places: DyadPlaces, out: Float64Array): void {
  const { p, s, onFirst, onSecond, first, second, middle, side } = places
  const p_x = points[p]
  const p_y = points[p + 1]
  const s_x = points[s]
  const s_y = points[s + 1]
  const a_x = points[onFirst] - p_x
  const a_y = points[onFirst + 1] - p_y
  const b_x = points[onSecond] - s_x
  const b_y = points[onSecond + 1] - s_y
  const first_x = carried[first]
  const first_y = carried[first + 1]
  const second_x = carried[second]
  const second_y = carried[second + 1]
  const inverse = 1 / (a_x * b_y - a_y * b_x)
  const aboutFirst = (carried[first + 2] - p_x * first_y + p_y * first_x) * inverse
  const aboutSecond = (carried[second + 2] - s_x * second_y + s_y * second_x) * inverse
  // The force at Q on the first part; on the second it is the opposite.
  const x = aboutFirst * b_x + aboutSecond * a_x
  const y = aboutFirst * b_y + aboutSecond * a_y
  out[middle] = side * x
  out[middle + 1] = side * y
  const { outerFirst, outerSecond } = places
  out[outerFirst.out] = outerFirst.side * (first_x - x)
  out[outerFirst.out + 1] = outerFirst.side * (first_y - y)
  out[outerSecond.out] = outerSecond.side * (second_x + x)
  out[outerSecond.out + 1] = outerSecond.side * (second_y + y)
  if (outerFirst.beyond >= 0) putBeyond(carried, points, outerFirst, first_x - x, first_y - y)
  if (outerSecond.beyond >= 0) putBeyond(carried, points, outerSecond, second_x + x, second_y + y)
}

/** Puts a force on the part beyond a contact. */
function putBeyond(carried: Float64Array, points: Float64Array, { beyond, at }: PassedOn, x: number, y: number): void {
  carried[beyond] += x
  carried[beyond + 1] += y
  carried[beyond + 2] += points[at] * y - points[at + 1] * x
}
