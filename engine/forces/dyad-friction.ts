/**
 * Joint forces with friction, dyad by dyad: no matrix, no influence of one joint's friction on another's force.
 *
 *           n                   The couple that friction gives in a pin is what the force R gives by itself when it
 *         ╱                     acts beside the pin's centre, where its line touches the friction circle:
 *       (·)──▶ R
 *                                     point = centre + κ n        n: direction of R on b, turned by +90°
 *
 * Both parts feel R at that point, so a finger with friction is a frictionless one whose pins stand at these points, and that has its
 * forces in closed form (dyad-responses.ts). The points hang on the directions of the forces alone: begin with the frictionless ones, move
 * the points, take the finger apart, and again. Since |R| = u · R with u its direction, and u is also the derivative of |R|,
 * this is Newton's method: right digits double from round to round, and three rounds are usual.
 *
 * Where it steps back. For one amplitude of the port the force at Q feeds back on itself through the friction couples by at most
 *
 *     (|b| (κ_P + κ_Q) + |a| (κ_S + κ_Q)) / |a × b|
 *
 * Below 1 in every dyad the forces are the only ones there are and change continuously with friction. Then a port that only turns the last
 * part has one effort; any other port has a factor that must keep its sign, as the determinant in magnitudes.ts. Nearer to a jam the
 * general way decides.
 */
import { limits } from '../numbers/limits.ts'
import { type DyadRoom, takeApart } from './dyad-responses.ts'
import type { PortAndLoad } from './general-way.ts'
import type { JointForces } from './two-force.ts'

/** Whether friction is too weak for the forces of any dyad to have two answers. @param levers κ of each joint, of either sign */
export function isMildOnDyads({ order, couplings }: DyadRoom, levers: Float64Array): boolean {
  for (let index = 0; index < order.dyads.length; index++) {
    const { outerFirst, middle, outerSecond } = order.dyads[index]
    const q = Math.abs(levers[middle.joint])
    const onFirst = couplings[2 * index + 1] * (Math.abs(levers[outerFirst.joint]) + q)
    const onSecond = couplings[2 * index] * (Math.abs(levers[outerSecond.joint]) + q)
    if (!(onFirst + onSecond < 1)) return false
  }
  return true
}

/** Whether a port does nothing but turn the last part, so that it bends no joint force. */
export function onlyTurnsLead({ order }: DyadRoom, port: Float64Array): boolean {
  const turn = 3 * order.lead.part - 1
  for (let column = 0; column < port.length; column++) if (column !== turn && port[column] !== 0) return false
  return true
}

/**
 * Solves for signed levers κ; the joint forces stand in `out`.
 *
 * @returns false where the general way has to decide
 */
export function solveByDyads(
  dyads: DyadRoom,
  { port, load }: PortAndLoad,
  { levers, out }: { readonly levers: Float64Array; readonly out: JointForces },
): boolean {
  const { centres, touching, ofLoad, ofPort } = dyads
  if (!isMildOnDyads(dyads, levers)) return false
  const steers = !onlyTurnsLead(dyads, port)
  let frictionless = 0
  touching.set(centres)
  for (let round = 0; round < limits.touchingRounds; round++) {
    const left = takeApart(dyads, touching, load, ofLoad)
    if (steers) {
      const factor = takeApart(dyads, touching, port, ofPort)
      if (round === 0) frictionless = factor
      if (!(factor * frictionless > 0)) return false
      for (let row = 0; row < ofLoad.length; row++) ofLoad[row] -= (left / factor) * ofPort[row]
    }
    if (settles(dyads, out) && round > 0) return true
    movePoints(dyads, levers, out)
  }
  return false
}

/** Takes over the forces of a round (what carries a load is its opposite). Returns whether they have settled. */
function settles({ ofLoad }: DyadRoom, { values, forces }: JointForces): boolean {
  let largest = 0
  let change = 0
  for (let joint = 0; joint < values.length; joint++) {
    const x = -ofLoad[2 * joint]
    const y = -ofLoad[2 * joint + 1]
    const away = Math.abs(x - forces[2 * joint]) + Math.abs(y - forces[2 * joint + 1])
    if (!(away <= change)) change = away
    values[joint] = Math.sqrt(x * x + y * y)
    if (values[joint] > largest) largest = values[joint]
    forces[2 * joint] = x
    forces[2 * joint + 1] = y
  }
  return change <= limits.touchingChange_ratio * largest
}

/** Moves each joint's points to its friction circle; a joint that carries next to nothing keeps its centre. */
function movePoints({ centres, touching }: DyadRoom, levers: Float64Array, { values, forces }: JointForces): void {
  for (let joint = 0; joint < values.length; joint++) {
    const share = values[joint] > 0 ? levers[joint] / values[joint] : 0
    const x = -share * forces[2 * joint + 1]
    const y = share * forces[2 * joint]
    for (let at = 4 * joint; at < 4 * joint + 4; at += 2) {
      touching[at] = centres[at] + x
      touching[at + 1] = centres[at + 1] + y
    }
  }
}
