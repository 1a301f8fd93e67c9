/** Joints as their two parts feel them. */
import type { Mechanism } from '../motion/mechanism.ts'

/** A joint as one of its two parts feels it. */
export interface Contact {
  readonly joint: number
  readonly part: number
  /** The part on the other side. */
  readonly beyond: number
  /** +1 when `part` is the joint's b, −1 when it is its a. */
  readonly side: 1 | -1
}

/** All joints of a part, in the mechanism's order. */
export function contactsOf({ joints }: Mechanism, part: number): Contact[] {
  return joints.flatMap(({ a, b }, joint): Contact[] => {
    if (b === part) return [{ joint, part, beyond: a, side: 1 }]
    return a === part ? [{ joint, part, beyond: b, side: -1 }] : []
  })
}
