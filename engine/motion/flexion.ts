/** The joints of a finger and how far each is bent. */
import type { Role } from '../design/design.ts'
import type { Mechanism } from './mechanism.ts'

export interface FingerJoint {
  readonly pin: number
  /** Nearer to the hand. */
  readonly upper: number
  readonly lower: number
}

/** From the hand outwards. */
const CHAIN: readonly Role[] = ['mount', 'proximal', 'middle', 'distal']

/**
 * Pins between neighbours of the chain mount, proximal, middle, distal. A finger without a middle phalanx has its distal on
 * the proximal. Links are no part of it. A design that gives no roles has no joints.
 */
export function fingerJoints(mechanism: Mechanism): FingerJoint[] {
  const { parts, pins } = mechanism.design
  const chain = CHAIN.flatMap((role) => {
    const part = parts.findIndex((candidate) => candidate.role === role)
    return part < 0 ? [] : [part]
  })
  return chain.slice(1).flatMap((lower, index) => {
    const upper = chain[index]
    const pin = pins.findIndex(
      ({ joins }) => joins.some(({ part }) => part === upper) && joins.some(({ part }) => part === lower),
    )
    return pin < 0 ? [] : [{ pin, upper, lower }]
  })
}

/** @returns rad, clockwise of the lower part against the upper, 0 where their frames are parallel */
export function flexion(posture: Float64Array, { upper, lower }: FingerJoint): number {
  return posture[3 * upper + 2] - posture[3 * lower + 2]
}
