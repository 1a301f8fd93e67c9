/**
 * Clearance taken up and links stretched: the posture that a set of forces really leaves.
 *
 * A hole is larger than its pin by c. Under a force the pin lies against one side of it:
 *
 *       x_b(hole) = x_a(pin) − (c/2) n         n: direction of the normal force on b, the joint force turned by the friction angle
 *
 * and a two-pin link of stiffness k under tension T is longer by T/k. Both change the posture, which changes the forces, so
 * posture and forces are worked out in turn until no margin moves. (Seven clearances of the example finger settle in about six
 * rounds.) The arms of the forces are taken at the hole centres: half a clearance, some 0.01 mm, is left out of them.
 *
 * A joint that carries next to nothing has no known side to lie on and is left in the middle; `playBand` (states.ts) gives how far
 * that can be wrong.
 */

import type { Condition } from '../motion/condition.ts'
import type { Joint, Mechanism } from '../motion/mechanism.ts'
import type { PathBench } from '../motion/path.ts'
import { settleWithin } from '../motion/settle.ts'
import { type TwoPinLink, twoPinLinks } from '../motion/two-pin-link.ts'
import { limits } from '../numbers/limits.ts'
import type { Vector } from '../numbers/vector.ts'
import type { Balance } from './balance.ts'

export interface TakeUpAsked<State extends Forced = Forced> {
  readonly bench: PathBench
  /** What fixes the posture: the stop's contact, or the drive's coordinate. */
  readonly held: Condition
  /** Forces at a posture; undefined when there is no equilibrium. */
  readonly forcesAt: (posture: Float64Array) => State | undefined
  /** Watched to know when it has settled, rad. */
  readonly marginsAt: (posture: Float64Array) => readonly number[]
  readonly clearance: boolean
  /** N/mm for each part, or undefined for rigid. */
  readonly stiffnessOf: (part: number) => number | undefined
}

/** Forces at a posture, and whatever else was found with them. */
export interface Forced {
  readonly balance: Balance
}

export interface TakenUp<State extends Forced = Forced> {
  readonly posture: Float64Array
  /** Forces of the last round: at a posture within the tolerance of this one. */
  readonly state: State
  readonly rounds: number
}

/** @param start the posture without clearance. @returns undefined when it does not settle or has no equilibrium on the way */
export function takeUp<State extends Forced>(asked: TakeUpAsked<State>, start: Float64Array): TakenUp<State> | undefined {
  let posture = start
  let last = asked.marginsAt(posture)
  for (let round = 1; round <= limits.takeUpRounds; round++) {
    const state = asked.forcesAt(posture)
    if (!state) return undefined
    const settled = settledUnder(asked, { balance: state.balance, start: posture, isFactored: round > 1 })
    if (!settled) return undefined
    posture = settled
    const margins = asked.marginsAt(posture)
    if (margins.every((margin, index) => Math.abs(margin - last[index]) <= limits.takeUpTolerance_rad))
      return { posture, state, rounds: round }
    last = margins
  }
  return undefined
}

/**
 * Posture that a known set of forces leaves, with the forces not worked out again.
 *
 * @param start a posture nearby. @returns undefined when it does not settle
 */
export function postureUnder(asked: Yielding, balance: Balance, start: Float64Array): Float64Array | undefined {
  return settledUnder(asked, { balance, start, isFactored: false })
}

/** What gives way under forces, and what holds it. */
type Yielding = Pick<TakeUpAsked, 'bench' | 'held' | 'clearance' | 'stiffnessOf'>

interface UnderForces {
  readonly balance: Balance
  readonly start: Float64Array
  /** Whether the last posture that was settled in this room lies close by: rounds move it by a hundredth of a millimetre. */
  readonly isFactored: boolean
}

function settledUnder(asked: Yielding, { balance, start, isFactored }: UnderForces): Float64Array | undefined {
  const { bench, held, clearance, stiffnessOf } = asked
  const { mechanism } = bench
  const offsets = bench.stock(mechanism.rows_count)
  if (clearance) addClearance(mechanism, balance, offsets)
  addStretch(mechanism, start, balance, stiffnessOf, offsets)
  return settleWithin(bench, start, held, { offsets, rounds_most: limits.settleRounds, isFactored })?.posture
}

function addClearance(mechanism: Mechanism, balance: Balance, offsets: Float64Array): void {
  const largest = balance.magnitudes.reduce((most, value) => Math.max(most, value), 0)
  mechanism.joints.forEach((joint, index) => {
    const magnitude = balance.magnitudes[index]
    if (!(magnitude > limits.takeUpSide_ratio * largest)) return
    const half = joint.clearance_mm / 2
    if (joint.kind === 'slot') {
      offsets[joint.row] -= half * Math.sign(balance.forces[joint.row])
      return
    }
    const side = pressedSide(joint, balance, index)
    offsets[joint.row] -= half * side.x
    offsets[joint.row + 1] -= half * side.y
  })
}

/**
 * Direction in which a pin presses on its hole, unit, mount frame: that of the normal force on the hole's part.
 *
 * R = N n − σ μ N t with t a quarter turn on from n, so n is R turned on by σ φ; sin φ = κ / r carries σ.
 *
 * @param joint of a pin that carries force
 */
export function pressedSide({ radius_mm, row }: Joint, { levers, forces, magnitudes }: Balance, index: number): Vector {
  const sine = radius_mm > 0 ? levers[index] / radius_mm : 0
  const cosine = Math.sqrt(1 - sine * sine)
  const x = forces[row] / magnitudes[index]
  const y = forces[row + 1] / magnitudes[index]
  return { x: cosine * x - sine * y, y: cosine * y + sine * x }
}

/** Half of a link's stretch goes to each of its ends, along the line of its pins. */
function addStretch(
  mechanism: Mechanism,
  posture: Float64Array,
  balance: Balance,
  stiffnessOf: (part: number) => number | undefined,
  offsets: Float64Array,
): void {
  for (const link of twoPinLinks(mechanism)) {
    const stiffness = stiffnessOf(link.part)
    if (stiffness === undefined) continue
    const { axis, tension_N } = linkTension(mechanism, link, posture, balance)
    const half = tension_N / stiffness / 2
    for (const end of link.ends) {
      const { row, b } = mechanism.joints[end.joint]
      // Hole of the link shifted outwards by half the stretch: x_b + shift = x_a, or x_b = x_a + shift.
      const sign = (b === link.part ? -1 : 1) * end.outward
      offsets[row] += sign * half * axis.x
      offsets[row + 1] += sign * half * axis.y
    }
  }
}

/** Force along a link, N, positive in tension: the mean of what its two ends carry along the line of its pins. */
export function linkTension(
  mechanism: Mechanism,
  link: TwoPinLink,
  posture: Float64Array,
  balance: Balance,
): { readonly axis: { readonly x: number; readonly y: number }; readonly tension_N: number } {
  const [first, second] = link.ends
  const turn = posture[3 * link.part + 2] + Math.atan2(second.at.y_mm - first.at.y_mm, second.at.x_mm - first.at.x_mm)
  const axis = { x: Math.cos(turn), y: Math.sin(turn) }
  const pulls = link.ends.map((end) => {
    const { row, b } = mechanism.joints[end.joint]
    const onLink = b === link.part ? 1 : -1
    return end.outward * onLink * (balance.forces[row] * axis.x + balance.forces[row + 1] * axis.y)
  })
  return { axis, tension_N: (pulls[0] + pulls[1]) / 2 }
}
