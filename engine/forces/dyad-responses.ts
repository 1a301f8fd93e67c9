/**
 * The joint forces that carry a generalised force, dyad by dyad in closed form: no matrix is factored.
 *
 *           Q              Moments of the first part about P and of the second about S, F the force at Q on the first:
 *       a ╱   ╲ b               a × F = A      b × F = B        a = Q − P,  b = Q − S
 *     P ●       ● S             F = (A b − B a) / (a × b)
 *
 * The forces at P and S follow from each part's own balance and go over to the parts that stay. The last part's couple is left
 * to whatever drives it, as force-frame.ts leaves it to the last row of its matrix; combinations that do no work have none, and
 * for them both give the same forces. Where an a × b is small the dyad is close to its dead centre and the matrix takes over.
 */
import type { Mechanism } from '../motion/mechanism.ts'
import type { ArrayStock } from '../numbers/array-stock.ts'
import { limits } from '../numbers/limits.ts'
import type { Contact } from './contact.ts'
import { type Dyad, type DyadOrder, dyadOrder } from './dyad-order.ts'

/** Room for the responses of one mechanism, at one posture at a time. */
export interface DyadRoom {
  readonly mechanism: Mechanism
  readonly order: DyadOrder
  readonly cosines: Float64Array
  readonly sines: Float64Array
  /** Of each dyad, `NUMBERS` numbers: a, b, 1/(a × b), and the arms of P and S from the origins of the parts they join. */
  readonly arms: Float64Array
  /** What is left to carry. */
  readonly carried: Float64Array
}

const NUMBERS = 13

/** @returns undefined for a mechanism that does not come apart into dyads */
export function dyadRoom(mechanism: Mechanism, numbers: ArrayStock): DyadRoom | undefined {
  const order = dyadOrder(mechanism)
  if (!order) return undefined
  const { parts_count, columns_count } = mechanism
  const turns = { cosines: numbers(parts_count), sines: numbers(parts_count) }
  return { mechanism, order, ...turns, arms: numbers(NUMBERS * order.dyads.length), carried: numbers(columns_count) }
}

/** Takes in a posture. @returns false where a dyad stands too near to its dead centre for the closed form */
export function readDyads(room: DyadRoom, posture: Float64Array): boolean {
  const { cosines, sines, order, arms } = room
  for (let part = 0; part < cosines.length; part++) {
    cosines[part] = Math.cos(posture[3 * part + 2])
    sines[part] = Math.sin(posture[3 * part + 2])
  }
  for (let index = 0; index < order.dyads.length; index++) {
    const at = NUMBERS * index
    readDyad(room, order.dyads[index], at)
    const size = Math.sqrt((arms[at] ** 2 + arms[at + 1] ** 2) * (arms[at + 2] ** 2 + arms[at + 3] ** 2))
    const twice = arms[at] * arms[at + 3] - arms[at + 1] * arms[at + 2]
    if (!(Math.abs(twice) >= limits.closedSine * size)) return false
    arms[at + 4] = 1 / twice
  }
  return true
}

function readDyad(room: DyadRoom, dyad: Dyad, at: number): void {
  const { arms } = room
  const { outerFirst, middle, outerSecond } = dyad
  putArm(room, outerFirst, outerFirst.part, at + 5)
  putArm(room, outerSecond, outerSecond.part, at + 7)
  putArm(room, outerFirst, outerFirst.beyond, at + 9)
  putArm(room, outerSecond, outerSecond.beyond, at + 11)
  putArm(room, middle, middle.part, at)
  putArm(room, middle, middle.beyond, at + 2)
  for (let axis = 0; axis < 2; axis++) {
    arms[at + axis] -= arms[at + 5 + axis]
    arms[at + 2 + axis] -= arms[at + 7 + axis]
  }
}

/** Arm of a joint from the origin of one of its parts, in the mount frame, mm. */
function putArm({ mechanism, cosines, sines, arms }: DyadRoom, { joint }: Contact, part: number, at: number): void {
  const { a, atA, atB } = mechanism.joints[joint]
  const { x_mm, y_mm } = a === part ? atA : atB
  arms[at] = cosines[part] * x_mm - sines[part] * y_mm
  arms[at + 1] = sines[part] * x_mm + cosines[part] * y_mm
}

/** Joint forces for a generalised force at the posture that was read last; into `out`, one entry a closure row, N. */
export function respondByDyads(room: DyadRoom, generalised: Float64Array, out: Float64Array): void {
  const { mechanism, order, carried } = room
  const { joints } = mechanism
  carried.set(generalised)
  for (let index = 0; index < order.dyads.length; index++) takeOff(room, order.dyads[index], NUMBERS * index, out)
  const { joint, part, side } = order.lead
  const { row } = joints[joint]
  out[row] = side * carried[3 * (part - 1)]
  out[row + 1] = side * carried[3 * (part - 1) + 1]
}

function takeOff({ mechanism, arms, carried }: DyadRoom, dyad: Dyad, at: number, out: Float64Array): void {
  const { outerFirst, middle, outerSecond } = dyad
  const { joints, scale_mm } = mechanism
  const first = 3 * (outerFirst.part - 1)
  const second = 3 * (outerSecond.part - 1)
  const first_x = carried[first]
  const first_y = carried[first + 1]
  const second_x = carried[second]
  const second_y = carried[second + 1]
  const aboutFirst = carried[first + 2] * scale_mm - (arms[at + 5] * first_y - arms[at + 6] * first_x)
  const aboutSecond = carried[second + 2] * scale_mm - (arms[at + 7] * second_y - arms[at + 8] * second_x)
  // The force at Q on the first part; on the second it is the opposite.
  const middle_x = (aboutFirst * arms[at + 2] + aboutSecond * arms[at]) * arms[at + 4]
  const middle_y = (aboutFirst * arms[at + 3] + aboutSecond * arms[at + 1]) * arms[at + 4]
  const row = joints[middle.joint].row
  out[row] = middle.side * middle_x
  out[row + 1] = middle.side * middle_y
  passOn(outerFirst, first_x - middle_x, first_y - middle_y, at + 9)
  passOn(outerSecond, second_x + middle_x, second_y + middle_y, at + 11)

  function passOn({ joint, side, beyond }: Contact, x: number, y: number, arm: number): void {
    const { row: outer } = joints[joint]
    out[outer] = side * x
    out[outer + 1] = side * y
    if (beyond === 0) return
    const column = 3 * (beyond - 1)
    carried[column] += x
    carried[column + 1] += y
    carried[column + 2] += (arms[arm] * y - arms[arm + 1] * x) / scale_mm
  }
}
