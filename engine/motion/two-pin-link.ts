/** Parts that are held by just two pins: coupling links. */
import type { Point } from '../design/design.ts'
import type { Mechanism } from './mechanism.ts'

export interface TwoPinLink {
  readonly part: number
  /** From the first end to the second. */
  readonly length_mm: number
  readonly ends: readonly [LinkEnd, LinkEnd]
}

interface LinkEnd {
  readonly joint: number
  /** −1 at the first end, +1 at the second: outward along the axis. */
  readonly outward: 1 | -1
  readonly at: Point
}

/** Parts (not the mount) that take part in just two pin joints. Looked for once a mechanism. */
export function twoPinLinks(mechanism: Mechanism): readonly TwoPinLink[] {
  const found = known.get(mechanism) ?? findLinks(mechanism)
  known.set(mechanism, found)
  return found
}

const known = new WeakMap<Mechanism, readonly TwoPinLink[]>()

function findLinks(mechanism: Mechanism): TwoPinLink[] {
  return mechanism.design.parts.flatMap((_, part) => {
    if (part === 0) return []
    const joints = mechanism.joints.flatMap((joint, index) => (joint.a === part || joint.b === part ? [index] : []))
    if (joints.length !== 2 || joints.some((index) => mechanism.joints[index].kind !== 'pin')) return []
    const at = (index: number): Point =>
      mechanism.joints[index].a === part ? mechanism.joints[index].atA : mechanism.joints[index].atB
    const [first, second] = [at(joints[0]), at(joints[1])]
    const length_mm = Math.hypot(second.x_mm - first.x_mm, second.y_mm - first.y_mm)
    if (length_mm === 0) return []
    return [
      {
        part,
        length_mm,
        ends: [
          { joint: joints[0], outward: -1, at: first },
          { joint: joints[1], outward: 1, at: second },
        ],
      },
    ]
  })
}
